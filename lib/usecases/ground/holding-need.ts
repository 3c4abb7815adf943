import 'server-only';
import type { Db } from '@/lib/data/db';
import type { PlotOnDay } from '@/lib/data/plot';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { areaCm2, type Footprint } from '@/lib/domain/ground/footprint';
import { cultivableCm2, needOf } from '@/lib/domain/need/need-of';
import { type StrawReason, strawNeed } from '@/lib/domain/need/straw-need';
import { loadMassG, type LoadSize, type LoadUnit } from '@/lib/domain/quantity/load-mass';
import { type Turn, turnOf } from '@/lib/domain/rotation/turn';
import { readNeedyGround, turnOfUndivided } from './needy-ground';
import { readStraw } from './read-straw';

/** How a dressing is measured: the rules in force, or those a delivery was opened with. */
export type Dressing = LoadSize & {
  readonly materialKey: string;
  readonly rateGPerM2: number;
  readonly intervalYears: number;
  readonly cultivableSharePercent: number;
};

/** One bed, or a plot with no beds drawn, and what it asks for. */
type NeedLine = {
  readonly id: string;
  readonly kind: 'bed' | 'plot';
  readonly label: string;
  readonly plotId: string;
  readonly plotNumber: string;
  readonly frameId: string;
  readonly footprint: Footprint | null;
  readonly areaCm2: number;
  readonly turn: Turn;
  /** What straw it wants, crop by crop; none where the delivery is not straw. */
  readonly straw: readonly StrawReason[];
  readonly massG: number;
  readonly assumedG: number;
};

type Serves = 'manure' | 'straw' | 'nothing';

export type HoldingNeed = {
  readonly season: number;
  /** Whether the need is manure for turns, straw by the recipes, or none that can be worked out. */
  readonly serves: Serves;
  readonly loadUnit: LoadUnit;
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

/** What a holding's plots need for a season, bed by bed, with the reasons. Of what is neither manure nor straw nothing is needed. */
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
  const { intervalYears, cultivableSharePercent } = dressing;
  const ids = holdings.flatMap(({ plotIds }) => plotIds);
  const ground = await readNeedyGround(db, scope, ids, { day, from: season, to: season });
  const serves = servesOf(dressing.materialKey);
  const strawOn = serves === 'straw' ? await readStraw(db, scope, { season, day, ground }) : () => [];
  const turn = (frameId: string, footprint: Footprint) =>
    turnOf({
      ground: footprint,
      season,
      intervalYears,
      manurings: ground.manuringsOf(frameId),
      planned: ground.plannedOf(frameId, season),
    });
  const lineOf = (plot: PlotOnDay): Omit<NeedLine, 'massG' | 'assumedG'>[] => {
    const beds = ground.bedsOf(plot.id);
    const place = { plotId: plot.id, plotNumber: plot.number, frameId: plot.frameId };
    if (beds.length)
      return beds.map(({ id, name, footprint, frameId }) => ({
        ...place,
        frameId,
        id,
        kind: 'bed',
        label: name,
        footprint,
        areaCm2: areaCm2(footprint),
        turn: turn(frameId, footprint),
        straw: strawOn(frameId, footprint),
      }));
    const undivided = cultivableCm2(plot.areaCm2, cultivableSharePercent);
    return [
      {
        ...place,
        id: plot.id,
        kind: 'plot',
        label: plot.number,
        footprint: null,
        areaCm2: undivided,
        turn: turnOfUndivided(undivided, intervalYears),
        straw: [],
      },
    ];
  };
  const lines = new Map(ground.plots.map((plot) => [plot.id, lineOf(plot)]));
  // As people count the plots, whatever order they are asked in.
  const places = new Map(ground.plots.map(({ id }, at) => [id, at]));
  const linesOf = (plotIds: readonly string[]) =>
    [...plotIds]
      .sort((a, b) => (places.get(a) ?? 0) - (places.get(b) ?? 0))
      .flatMap((plotId) => lines.get(plotId) ?? []);
  const { rateGPerM2, loadUnit = 'barrow' } = dressing;
  const common = { season, serves, loadUnit, barrowLoadG: loadMassG(dressing), rateGPerM2 };
  return new Map(
    holdings.map(({ id, plotIds }) => {
      const own = linesOf(plotIds);
      const need = weigh(serves, own, dressing);
      const weights = new Map(need.grounds.map((one) => [one.id, one]));
      const lines = own.map((line) => ({ ...line, massG: 0, assumedG: 0, ...weights.get(line.id) }));
      return [id, { ...common, loads: need.loads, lines }];
    }),
  );
}

function servesOf(materialKey: string): Serves {
  if (materialKey === 'straw') return 'straw';
  return materialOf(materialKey)?.feedsTurns ? 'manure' : 'nothing';
}

type Weighed = {
  readonly loads: number;
  readonly grounds: readonly { readonly id: string; readonly massG: number; readonly assumedG?: number }[];
};

function weigh(serves: Serves, own: readonly Omit<NeedLine, 'massG' | 'assumedG'>[], dressing: Dressing): Weighed {
  if (serves === 'nothing') return { loads: 0, grounds: [] };
  if (serves === 'manure')
    return needOf(
      own.map(({ id, turn }) => ({ id, ...turn })),
      dressing,
    );
  return strawNeed(
    own.map(({ id, straw }) => ({ id, reasons: straw })),
    loadMassG(dressing),
  );
}
