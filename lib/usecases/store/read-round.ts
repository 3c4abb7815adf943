import 'server-only';
import { z } from 'zod';
import type { LotRecord } from '@/lib/data/store-lot';
import { canEnter } from '@/lib/domain/policy/standing';
import { amountPerPiece } from '@/lib/domain/store/losses-seen';
import { type RoundDue, roundsDue } from '@/lib/domain/store/rounds-due';
import { query } from '../operation';
import { shownLot } from './shown-lot';
import { storeOf } from './store-of';

/**
 * The round: every lot that holds anything or was gone over today, by place, in an order that does not change under the thumb.
 * What was found today can be undone where it stands.
 */
export const readRound = query({
  name: 'read-round',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { today, scope } = context;
    const { places, lots } = await storeOf(context);
    const rounds = new Map(roundsDue(lots, today).map((round) => [round.lotId, round]));
    const rows = lots.map((lot) => roundRow(lot, rounds.get(lot.id) ?? null, today));
    return {
      today,
      units: scope.units,
      places: places
        .map(({ id, name, kind }) => ({ id, name, kind, rows: rows.filter(({ place }) => place.id === id) }))
        .map((place) => ({ ...place, rows: place.rows.filter(({ round, last }) => round || last?.isToday) }))
        .filter((place) => place.rows.length),
      hasLots: lots.length > 0,
    };
  },
});

function roundRow(lot: LotRecord, round: RoundDue | null, today: string) {
  const last = lot.goingsOver.at(-1);
  const { id, on, used, bad, badWhy, sound } = last ?? {};
  return {
    ...shownLot(lot),
    round,
    /** What − and + go up and down by: a piece, or what one weighs. */
    step: lot.measure === 'pieces' ? 1 : Math.round(amountPerPiece(lot)),
    last:
      id && on
        ? { id, on, used: used ?? 0, bad: bad ?? 0, badWhy: badWhy ?? null, sound: sound ?? 0, isToday: on === today }
        : null,
  };
}
