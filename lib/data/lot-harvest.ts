import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { fromDbDay } from './day';
import type { Db } from './db';
import type { Scope } from './scope';

/** A harvest as a lot takes it over. */
export type HarvestForLot = {
  readonly id: string;
  readonly holdingId: string;
  readonly on: CalendarDate;
  readonly measure: 'grams' | 'pieces';
  readonly amount: number;
  readonly cropKey: string;
  readonly variety: string | null;
};

/** Harvests of some holdings that were not taken back, by their ids. */
export async function harvestsForLots(
  db: Db,
  scope: Scope,
  ids: readonly string[],
  holdingIds: readonly string[],
): Promise<HarvestForLot[]> {
  const rows = await db.harvest.findMany({
    where: {
      id: { in: [...ids] },
      societyId: scope.societyId,
      holdingId: { in: [...holdingIds] },
      retiredAt: null,
    },
    include: { planting: { select: { cropKey: true, variety: true } } },
  });
  return rows.map(({ id, holdingId, onDay, measure, amount, planting }) => ({
    ...{ id, holdingId, amount, ...planting },
    on: fromDbDay(onDay),
    measure: measure === 'grams' ? 'grams' : 'pieces',
  }));
}
