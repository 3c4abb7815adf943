import 'server-only';
import { type LotRecord, lotsOf } from '@/lib/data/store-lot';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { storeAnswers } from '@/lib/domain/catalogue/store-model';
import { type CuringClock, curingClock } from '@/lib/domain/store/curing-clock';
import { firstToUse } from '@/lib/domain/store/first-to-use';
import { lotNow } from '@/lib/domain/store/go-over';
import { roundsDue } from '@/lib/domain/store/rounds-due';
import type { ReadContext } from '../operation';

/** What wants doing in the store: a round at a place, a lot whose curing is over, one that must be used now. */
export type StoreDue =
  | {
      readonly code: 'store-round';
      readonly placeId: string;
      readonly place: string;
      readonly lots: number;
      readonly daysLate: number;
      readonly missedRounds: number;
    }
  | {
      readonly code: 'store-cured';
      readonly lotId: string;
      readonly keepingKey: string;
      readonly variety: string | null;
      readonly state: Exclude<CuringClock['state'], 'curing'>;
      readonly latestOn: CalendarDate;
    }
  | {
      readonly code: 'store-use-now';
      readonly lotId: string;
      readonly keepingKey: string;
      readonly variety: string | null;
      readonly place: string;
      readonly medianDays: number;
    };

/** What wants doing in the store of some holdings today: rounds first, the latest before the others. */
export async function dueOfStore(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  holdings: readonly { readonly id: string }[],
): Promise<StoreDue[]> {
  const ids = holdings.map(({ id }) => id);
  const lots = (await lotsOf(db, scope, ids)).filter((lot) => lotNow(lot).sound > 0);
  return [...roundsOf(lots, today), ...lots.flatMap((lot) => curedOf(lot, today)), ...toUseNow(lots, today)];
}

function roundsOf(lots: readonly LotRecord[], today: CalendarDate): StoreDue[] {
  const due = roundsDue(lots, today).filter(({ isDue }) => isDue);
  const places = new Map(lots.map(({ place }) => [place.id, place.name]));
  return [...places]
    .map(([placeId, place]) => ({ placeId, place, rounds: due.filter((round) => round.placeId === placeId) }))
    .filter(({ rounds }) => rounds.length)
    .map(({ rounds, ...at }) => ({
      ...at,
      code: 'store-round' as const,
      lots: rounds.length,
      daysLate: Math.max(...rounds.map(({ daysLate }) => daysLate)),
      missedRounds: Math.max(...rounds.map(({ missedRounds }) => missedRounds)),
    }))
    .sort((one, other) => other.daysLate - one.daysLate);
}

function curedOf({ id: lotId, keepingKey, variety, curingFrom, curedOn }: LotRecord, today: CalendarDate): StoreDue[] {
  if (curingFrom === null || curedOn !== null) return [];
  const clock = curingClock(keepingKey, curingFrom, today);
  if (!clock || clock.state === 'curing') return [];
  const { state, latestOn } = clock;
  return [{ code: 'store-cured', lotId, keepingKey, variety, state, latestOn }];
}

function toUseNow(lots: readonly LotRecord[], today: CalendarDate): StoreDue[] {
  const byId = new Map(lots.map((lot) => [lot.id, lot]));
  return firstToUse(lots, today)
    .filter(({ useBy }) => useBy.medianDays <= storeAnswers.useNowDays.value)
    .flatMap(({ lotId, useBy: { medianDays } }) => {
      const lot = byId.get(lotId);
      const { keepingKey = '', variety = null, place } = lot ?? {};
      return place ? [{ code: 'store-use-now', lotId, keepingKey, variety, place: place.name, medianDays }] : [];
    });
}
