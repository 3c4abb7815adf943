import type { readRound } from '@/lib/usecases/store/read-round';

export type Round = Awaited<ReturnType<typeof readRound.run>>;
export type RoundRow = Round['places'][number]['rows'][number];

/** The lot in hand: the one that was asked for, while anything is left of it; else the first that is due. */
export function rowInHand(places: Round['places'], asked: string | undefined): RoundRow | undefined {
  const rows = places.flatMap((place) => place.rows);
  return rows.find(({ id, round }) => id === asked && round) ?? rows.find(({ round }) => round?.isDue);
}
