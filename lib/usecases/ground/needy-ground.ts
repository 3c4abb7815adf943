import 'server-only';
import { type BedRecord, bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { Db } from '@/lib/data/db';
import { manuringsIn } from '@/lib/data/ground-work';
import { plantingsIn } from '@/lib/data/planting';
import { type PlotOnDay, plotsOn } from '@/lib/data/plot';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { CropGroup } from '@/lib/domain/catalogue/crop-groups';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { bareKey } from '@/lib/domain/rotation/recorded-planting';
import type { Manuring, PlannedGround } from '@/lib/domain/rotation/turn';

/** A crop on some ground for a season, as the need is worked out from it. */
export type PlannedCrop = PlannedGround & { readonly cropGroup: CropGroup | null };

/** Plots with all that their need for some seasons is worked out from. */
export type NeedyGround = {
  readonly plots: readonly PlotOnDay[];
  readonly bedsOf: (plotId: string) => readonly BedRecord[];
  readonly manuringsOf: (frameId: string) => readonly Manuring[];
  readonly plannedOf: (frameId: string, season: number) => readonly PlannedCrop[];
  readonly frameIds: readonly string[];
};

/** Read the ground of plots for some seasons: five queries, whatever their number. */
export async function readNeedyGround(
  db: Db,
  scope: Scope,
  plotIds: readonly string[],
  given: { readonly day: CalendarDate; readonly from: number; readonly to: number },
): Promise<NeedyGround> {
  const { day, from, to } = given;
  const [plots, beds, crops] = await Promise.all([
    plotsOn(db, scope, day, { ids: plotIds }),
    bedsStanding(db, scope, day, day, plotIds),
    cropsOf(db, scope),
  ]);
  const frameIds = [...new Set([...plots, ...beds].map(({ frameId }) => frameId))];
  const [plantings, manurings] = await Promise.all([
    plantingsIn(db, scope, crops, { from, to }, frameIds),
    manuringsIn(db, scope, frameIds),
  ]);
  const planted = byFrame(plantings.filter(({ cropKey }) => cropKey !== bareKey));
  const manured = byFrame(manurings);
  const drawn = new Map<string, BedRecord[]>();
  for (const bed of beds) drawn.set(bed.plotId, [...(drawn.get(bed.plotId) ?? []), bed]);
  return {
    plots,
    frameIds,
    bedsOf: (plotId) => drawn.get(plotId) ?? [],
    manuringsOf: (frameId) => manured.get(frameId) ?? [],
    plannedOf: (frameId, season) =>
      (planted.get(frameId) ?? [])
        .filter(({ firstSeason, lastSeason }) => firstSeason <= season && lastSeason >= season)
        .map(({ footprint, cropKey, cropGroup }) => ({
          footprint,
          cropGroup,
          takesManure: crops.get(cropKey)?.takesManure ?? false,
        })),
  };
}

/** The turn of ground that nobody has divided into beds: without a record of its beds, all of it is assumed. */
export function turnOfUndivided(cultivableCm2: number, intervalYears: number) {
  return {
    intervalYears,
    dueCm2: 0,
    unloggedCm2: cultivableCm2,
    notDueCm2: 0,
    reasons: [{ code: 'unlogged' as const, areaCm2: cultivableCm2 }],
  };
}
