import 'server-only';
import type { BallotRecord } from '@/lib/data/ballot';
import { namesOf } from '@/lib/data/hand';
import { holdingsOn } from '@/lib/data/holding';
import { dayIn } from '@/lib/platform/clock';
import type { ReadContext } from '../operation';

/** A closed count as every member sees it: who raised a hand for what, by name, and for a holding its plots and who raised it. */
export type ShownResult = {
  readonly hands: number;
  readonly needed: number;
  readonly entitled: number;
  readonly outcome: 'carried' | 'not-carried' | 'no-quorum';
  readonly carried: string | null;
  readonly counts: readonly {
    readonly id: string;
    readonly words: string;
    readonly hands: number;
    readonly by: readonly ShownHand[];
  }[];
};

export type ShownHand = {
  readonly name: string;
  /** The holding’s plots, on the day the question was opened. */
  readonly plots: readonly string[];
  /** Entered by the secretary for a member without an account. */
  readonly enteredBy: string | null;
};

/** The results of closed counts, by their ids. */
export async function shownResults(
  { db, scope }: Pick<ReadContext, 'db' | 'scope'>,
  ballots: readonly BallotRecord[],
): Promise<ReadonlyMap<string, ShownResult>> {
  const cast = ballots.flatMap(({ result }) => result?.cast ?? []);
  const names = await namesOf(
    db,
    scope,
    cast.flatMap(({ memberId, raisedById }) => [memberId, raisedById]),
  );
  const shown = new Map<string, ShownResult>();
  for (const ballot of ballots) {
    const plots = await plotsAtOpening({ db, scope }, ballot);
    const one = resultOf(ballot, names, plots);
    if (one) shown.set(ballot.id, one);
  }
  return shown;
}

/** The plots of holdings on the day on which a question was opened; nothing where hands are raised by members. */
export async function plotsAtOpening(
  { db, scope }: Pick<ReadContext, 'db' | 'scope'>,
  { handsBy, openedAt }: BallotRecord,
): Promise<ReadonlyMap<string, readonly string[]>> {
  if (handsBy === 'member' || !openedAt) return new Map();
  const holdings = await holdingsOn(db, scope, dayIn(scope.timeZone, openedAt));
  return new Map(holdings.map(({ id, plots }) => [id, plots.map(({ number }) => number)]));
}

function resultOf(
  { result, entitled, choices }: BallotRecord,
  names: ReadonlyMap<string, string>,
  plots: ReadonlyMap<string, readonly string[]>,
): ShownResult | null {
  if (!result || entitled === null) return null;
  const { hands, needed, outcome, carriedId, counts, cast } = result;
  const nameOf = (id: string) => names.get(id) ?? 'a former member';
  const handsFor = (choice: string) =>
    cast
      .filter(({ choiceId }) => choiceId === choice)
      .map(({ memberId, holdingId, raisedById }) => ({
        name: nameOf(memberId),
        plots: plots.get(holdingId ?? '') ?? [],
        enteredBy: raisedById === memberId ? null : nameOf(raisedById),
      }))
      .toSorted((a, b) => a.name.localeCompare(b.name, 'en-GB'));
  return {
    ...{ hands, needed, entitled, outcome },
    carried: choices.find(({ id }) => id === carriedId)?.words ?? null,
    counts: choices.map(({ id, words }) => ({
      ...{ id, words },
      hands: counts.find(({ choiceId }) => choiceId === id)?.hands ?? 0,
      by: handsFor(id),
    })),
  };
}
