import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { Db } from '@/lib/data/db';
import { manuringsIn } from '@/lib/data/ground-work';
import { plantingsIn } from '@/lib/data/planting';
import { plotsOn } from '@/lib/data/plot';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { areaCm2, type Footprint } from '@/lib/domain/ground/footprint';
import { cultivableCm2, needOf } from '@/lib/domain/need/need-of';
import { bareKey } from '@/lib/domain/rotation/recorded-planting';
import { type Turn, turnOf } from '@/lib/domain/rotation/turn';

/** How a dressing is measured: the rules in force, or those a delivery was opened with. */
export type Dressing = {
  readonly materialKey: string;
  readonly rateGPerM2: number;
  readonly barrowLitres: number;
  readonly densityGPerL: number;
  readonly intervalYears: number;
  readonly cultivableSharePercent: number;
};

/** One bed, or a plot with no beds drawn, and what it asks for. */
type NeedLine = {
  readonly id: string;
  readonly kind: 'bed' | 'plot';
  readonly label: string;
  readonly plotNumber: string;
  readonly frameId: string;
  readonly footprint: Footprint | null;
  readonly areaCm2: number;
  readonly turn: Turn;
  readonly massG: number;
  readonly assumedG: number;
};

export type HoldingNeed = {
  readonly season: number;
  readonly loads: number;
  readonly barrowLoadG: number;
  readonly rateGPerM2: number;
  readonly lines: readonly NeedLine[];
};

/** The season that manure put on a day serves: from September on it is dug in for the next. Common practice. */
export function seasonServed(day: CalendarDate): number {
  const [year = '', month = ''] = day.split('-');
  return Number(year) + (Number(month) >= 9 ? 1 : 0);
}

/** What a holding's plots need for a season, bed by bed, with the reasons. A material that feeds no turns is not needed. */
export async function needOfPlots(
  db: Db,
  scope: Scope,
  plotIds: readonly string[],
  given: { season: number; day: CalendarDate; dressing: Dressing },
): Promise<HoldingNeed> {
  const needs = await needsByHolding(db, scope, [{ id: 'one', plotIds }], given);
  const one = needs.get('one');
  if (!one) throw new Error('a holding that was asked for has no need');
  return one;
}

/** The same for many holdings at once, with a handful of queries whatever their number. */
export async function needsByHolding(
  db: Db,
  scope: Scope,
  holdings: readonly { id: string; plotIds: readonly string[] }[],
  given: { season: number; day: CalendarDate; dressing: Dressing },
): Promise<ReadonlyMap<string, HoldingNeed>> {
  const { season, day, dressing } = given;
  const ids = holdings.flatMap(({ plotIds }) => plotIds);
  const [plots, beds, crops] = await Promise.all([
    plotsOn(db, scope, day, { ids }),
    bedsStanding(db, scope, day, day, ids),
    cropsOf(db, scope),
  ]);
  const frameIds = [...new Set([...plots, ...beds].map(({ frameId }) => frameId))];
  const [planted, manurings] = await Promise.all([
    plantingsIn(db, scope, crops, { from: season, to: season }, frameIds),
    manuringsIn(db, scope, frameIds),
  ]);
  const feeds = materialOf(dressing.materialKey)?.feedsTurns ?? false;
  const turn = (frameId: string, ground: Footprint) =>
    turnOf({
      ground,
      season,
      intervalYears: dressing.intervalYears,
      manurings: manurings.filter((one) => one.frameId === frameId),
      planned: planted
        .filter((one) => one.frameId === frameId && one.cropKey !== bareKey)
        .map(({ footprint, cropKey }) => ({ footprint, takesManure: crops.get(cropKey)?.takesManure ?? false })),
    });
  const linesOf = (plotIds: readonly string[]) =>
    plots
      .filter(({ id }) => plotIds.includes(id))
      .flatMap((plot): Omit<NeedLine, 'massG' | 'assumedG'>[] => {
        const own = beds.filter(({ plotId }) => plotId === plot.id);
        const place = { plotNumber: plot.number, frameId: plot.frameId };
        if (own.length)
          return own.map(({ id, name, footprint, frameId }) => ({
            ...place,
            frameId,
            id,
            kind: 'bed',
            label: name,
            footprint,
            areaCm2: areaCm2(footprint),
            turn: turn(frameId, footprint),
          }));
        const unlogged = cultivableCm2(plot.areaCm2, dressing.cultivableSharePercent);
        const turnOfPlot: Turn = {
          dueCm2: 0,
          unloggedCm2: unlogged,
          notDueCm2: 0,
          intervalYears: dressing.intervalYears,
          reasons: [{ code: 'unlogged', areaCm2: unlogged }],
        };
        return [
          {
            ...place,
            id: plot.id,
            kind: 'plot',
            label: plot.number,
            footprint: null,
            areaCm2: unlogged,
            turn: turnOfPlot,
          },
        ];
      });
  return new Map(
    holdings.map(({ id, plotIds }) => {
      const lines = linesOf(plotIds);
      const need = needOf(feeds ? lines.map((line) => ({ id: line.id, ...line.turn })) : [], dressing);
      const weights = new Map(need.grounds.map((ground) => [ground.id, ground]));
      const weighed = lines.map((line) => ({
        ...line,
        massG: weights.get(line.id)?.massG ?? 0,
        assumedG: weights.get(line.id)?.assumedG ?? 0,
      }));
      return [
        id,
        { season, loads: need.loads, barrowLoadG: need.barrowLoadG, rateGPerM2: dressing.rateGPerM2, lines: weighed },
      ];
    }),
  );
}
