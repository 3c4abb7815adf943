import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { toDbDay } from './day';
import type { Tx } from './db';
import type { Scope } from './scope';

/** A planting's days and what follows from them. */
export type PlantingDays = {
  readonly sownOn: CalendarDate | null;
  readonly plantedOn: CalendarDate | null;
  readonly clearedOn: CalendarDate | null;
  readonly firstSeason: number;
  readonly lastSeason: number;
  readonly planned: boolean;
};

/** Hold a planting still until the transaction ends, so that two who enter a day at once see each other's. */
export async function lockPlanting(tx: Tx, scope: Scope, id: string): Promise<void> {
  await tx.$queryRaw`SELECT 1 FROM "Planting" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
}

/** Write a planting's days; what they were before is in the book. */
export async function setPlantingDays(tx: Tx, scope: Scope, id: string, days: PlantingDays): Promise<void> {
  const { sownOn, plantedOn, clearedOn, ...seasons } = days;
  await tx.planting.updateMany({
    where: { id, societyId: scope.societyId, retiredAt: null },
    data: {
      ...seasons,
      sownOn: sownOn && toDbDay(sownOn),
      plantedOn: plantedOn && toDbDay(plantedOn),
      clearedOn: clearedOn && toDbDay(clearedOn),
    },
  });
}
