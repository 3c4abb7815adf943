import 'server-only';
import { z } from 'zod';
import { canEnter } from '@/lib/domain/policy/standing';
import { curingClock } from '@/lib/domain/store/curing-clock';
import { firstToUse } from '@/lib/domain/store/first-to-use';
import { lotNow } from '@/lib/domain/store/go-over';
import { roundsDue } from '@/lib/domain/store/rounds-due';
import { query } from '../operation';
import { shownLot } from './shown-lot';
import { shownHolding, storeOf } from './store-of';

/** What is in store, in the order in which it is best used, with the rounds by place and what is curing. */
export const readStore = query({
  name: 'read-store',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { today, scope } = context;
    const { holdings, places, lots } = await storeOf(context);
    const byId = new Map(lots.map((lot) => [lot.id, lot]));
    const rounds = roundsDue(lots, today);
    const roundOf = new Map(rounds.map((round) => [round.lotId, round]));
    const held = firstToUse(lots, today).flatMap(({ lotId, reasons, useBy }) => {
      const lot = byId.get(lotId);
      return lot ? [{ ...shownLot(lot), reasons, useBy, round: roundOf.get(lotId) ?? null }] : [];
    });
    return {
      today,
      units: scope.units,
      holdings: holdings.map(shownHolding),
      held,
      places: places.map(({ id, name, kind, tenthC }) => {
        const there = rounds.filter(({ placeId }) => placeId === id);
        const due = there.filter(({ isDue }) => isDue);
        return {
          ...{ id, name, kind, tenthC },
          lots: there.length,
          due: due.length,
          mostDaysLate: Math.max(0, ...due.map(({ daysLate }) => daysLate)),
          missedRounds: Math.max(0, ...due.map(({ missedRounds }) => missedRounds)),
          nextOn: there.map(({ dueOn }) => dueOn).sort()[0] ?? null,
        };
      }),
      curing: lots.flatMap((lot) => {
        if (lot.curingFrom === null || lot.curedOn !== null || lotNow(lot).sound === 0) return [];
        const clock = curingClock(lot.keepingKey, lot.curingFrom, today);
        return clock ? [{ ...shownLot(lot), clock }] : [];
      }),
      usedUp: lots
        .filter((lot) => lotNow(lot).sound === 0)
        .map(shownLot)
        .toReversed()
        .slice(0, 30),
    };
  },
});
