import 'server-only';
import { bookedGroundOf, bookingsOf } from '@/lib/data/booking';
import type { DeliveryRecord } from '@/lib/data/delivery';
import { holdingsOn } from '@/lib/data/holding';
import { type PlotOnDay, plotsOn } from '@/lib/data/plot';
import { settingsOn } from '@/lib/data/setting';
import { materials } from '@/lib/domain/catalogue/materials';
import { splitLoads } from '@/lib/domain/placing/split-loads';
import { needsByHolding, seasonServed } from '../ground/holding-need';
import type { ReadContext } from '../operation';

/** Loads by plot, over all the society's sites; and those of holdings that have no plot today. */
export type PlotLoads = { readonly byPlot: ReadonlyMap<string, number>; readonly nowhere: number };

type Claim = {
  readonly plotIds: readonly string[];
  readonly loads: number;
  readonly dueOf: ReadonlyMap<string, number>;
};

/** The loads of a delivery: its shares once they stand, what is asked for before. They go to the beds that were named. */
export async function loadsOfDelivery(
  context: ReadContext,
  delivery: Pick<DeliveryRecord, 'id'>,
  basis: 'shares' | 'bookings',
): Promise<PlotLoads> {
  const { db, scope, today } = context;
  const [bookings, ground, holdings] = await Promise.all([
    bookingsOf(db, scope, delivery.id),
    bookedGroundOf(db, scope, delivery.id),
    holdingsOn(db, scope, today),
  ]);
  const plotsOf = new Map(holdings.map(({ id, plots }) => [id, plots.map((plot) => plot.id)]));
  const claims = bookings.map(({ id, holdingId, asked, share }) => ({
    plotIds: plotsOf.get(holdingId) ?? [],
    loads: basis === 'shares' ? (share ?? 0) : asked,
    dueOf: summed((ground.get(id) ?? []).map(({ plotId, dueCm2 }) => [plotId, dueCm2])),
  }));
  return toPlots(context, claims);
}

/** The loads that the ground of every holding asks for, of the usual manure, for the season that work of today serves. */
export async function loadsNeeded(context: ReadContext): Promise<PlotLoads & { season: number; materialName: string }> {
  const { db, scope, today } = context;
  const [settings, holdings] = await Promise.all([settingsOn(db, scope, today), holdingsOn(db, scope, today)]);
  const usual = materials.find(({ feedsTurns }) => feedsTurns);
  if (!usual) throw new Error('the catalogue lacks a material that feeds turns');
  const season = seasonServed(today);
  const dressing = {
    materialKey: usual.key,
    densityGPerL: usual.densityGPerL,
    rateGPerM2: settings.manureRateGPerM2,
    barrowLitres: settings.barrowLitres,
    intervalYears: settings.manuringIntervalYears,
    cultivableSharePercent: settings.cultivableSharePercent,
  };
  const held = holdings.map(({ id, plots }) => ({ id, plotIds: plots.map((plot) => plot.id) }));
  const needs = await needsByHolding(db, scope, held, { season, day: today, dressing });
  const claims = held.map(({ id, plotIds }) => {
    const { loads = 0, lines = [] } = needs.get(id) ?? {};
    return { plotIds, loads, dueOf: summed(lines.map(({ plotId, massG }) => [plotId, massG])) };
  });
  return { ...(await toPlots(context, claims)), season, materialName: usual.name };
}

// By the ground that is due where it is known, else by the plots' size.
async function toPlots({ db, scope, today }: ReadContext, claims: readonly Claim[]): Promise<PlotLoads> {
  const plots = new Map((await plotsOn(db, scope, today)).map((plot) => [plot.id, plot]));
  const shares = claims.flatMap(({ plotIds, loads, dueOf }) => {
    const own = plotIds.flatMap((id) => plots.get(id) ?? []);
    const isKnown = own.some(({ id }) => dueOf.get(id));
    const weightOf = ({ id, areaCm2 }: PlotOnDay) => (isKnown ? (dueOf.get(id) ?? 0) : areaCm2);
    return own.length
      ? [
          ...splitLoads(
            loads,
            own.map((plot) => ({ id: plot.id, weight: weightOf(plot) })),
          ),
        ]
      : [];
  });
  const byPlot = summed(shares);
  const all = claims.reduce((sum, { loads }) => sum + loads, 0);
  return { byPlot, nowhere: all - [...byPlot.values()].reduce((sum, loads) => sum + loads, 0) };
}

function summed(rows: readonly (readonly [string, number])[]): Map<string, number> {
  const sums = new Map<string, number>();
  for (const [id, value] of rows) sums.set(id, (sums.get(id) ?? 0) + value);
  return sums;
}
