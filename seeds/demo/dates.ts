import { randomUUID } from 'node:crypto';
import { db } from '@/lib/data/db';
import { type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import type { Caller } from '@/lib/usecases/operation';
import { done } from './done';

/** What stands and what is planned on the third and fourth bed of a plot: onions to be sown in January, and a winter crop in the way of shallots. */
const plans = [
  { nth: 2, cropKey: 'onion', after: 1 },
  { nth: 3, cropKey: 'winter-cabbage', after: 0 },
  { nth: 3, cropKey: 'shallot', after: 1 },
] as const;

/** Plan beds of a plot so that its dates have something to say, in place of what was recorded there for those seasons. */
export async function planDates(caller: Caller, plotId: string, today: CalendarDate): Promise<void> {
  const beds = await db().bed.findMany({ where: { plotId }, orderBy: { name: 'asc' } });
  for (const { nth, cropKey, after } of plans) {
    const bedId = beds[nth]?.id ?? '';
    const firstSeason = yearOf(today) + after;
    const before = await db().planting.findMany({
      where: { bedId, firstSeason, lastSeason: firstSeason, retiredAt: null },
    });
    const record = { bedId, cropKey, season: String(firstSeason), replaces: before[0]?.id ?? '' };
    await done(recordPlanting.run(caller, { writeId: randomUUID(), ...record }));
  }
}
