import 'server-only';
import { type LotRecord, lotsOf } from '@/lib/data/store-lot';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Dated } from '@/lib/domain/reminders/dated';
import { curingClock } from '@/lib/domain/store/curing-clock';
import { lotNow } from '@/lib/domain/store/go-over';
import { type RoundDue, roundsDue } from '@/lib/domain/store/rounds-due';
import type { ReadContext } from '../operation';

/** The dated things of a store: the next round of each place, for each interval at which lots there are gone over; and curing. */
export async function datesOfStore(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  holdings: readonly { readonly id: string }[],
): Promise<Dated[]> {
  const ids = holdings.map(({ id }) => id);
  const lots = (await lotsOf(db, scope, ids)).filter((lot) => lotNow(lot).sound > 0);
  return [...nextRounds(lots, today), ...lots.flatMap((lot) => curing(lot, today))];
}

// What is gone over as often is gone over together, so place and interval name the round for ever; it moves as rounds are done.
function nextRounds(lots: readonly LotRecord[], today: CalendarDate): Dated[] {
  const places = new Map(lots.map(({ place }) => [place.id, place.name]));
  const rounds = roundsDue(lots, today);
  const keyOf = ({ placeId, everyDays }: RoundDue) => `round ${placeId} ${everyDays}`;
  return [...new Set(rounds.map(keyOf))].flatMap((key): Dated[] => {
    const group = rounds.filter((round) => keyOf(round) === key);
    const [on] = group.map(({ dueOn }) => dueOn).sort();
    if (!on) return [];
    // Whoever is late goes over all that is due by now in one round.
    const together = group.filter(({ dueOn }) => dueOn <= (on < today ? today : on));
    const facts = { place: places.get(group[0]?.placeId ?? '') ?? '', lots: together.length };
    return [{ key, code: 'store-round', from: on, to: on, facts }];
  });
}

function curing({ id, keepingKey, curingFrom, curedOn, place }: LotRecord, today: CalendarDate): Dated[] {
  if (curingFrom === null || curedOn !== null) return [];
  const clock = curingClock(keepingKey, curingFrom, today);
  if (!clock || clock.state === 'not-cured') return [];
  const { readyOn, latestOn } = clock;
  const facts = { lotId: id, keepingKey, place: place.name };
  return [
    { key: `curing ${id}`, code: 'store-cured', from: readyOn, to: latestOn < readyOn ? readyOn : latestOn, facts },
  ];
}
