import 'server-only';
import { bedsStanding, createBeds, noteBedLineage, retireBed } from '@/lib/data/bed';
import { type PlotOnDay, plotById } from '@/lib/data/plot';
import { createPlots, retirePlot } from '@/lib/data/plot-store';
import { beginTenancies, endTenancyOn, lockTenancyOn } from '@/lib/data/tenancy';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { type Frame, toSite } from '@/lib/domain/ground/frame';
import {
  type Axis,
  cutPolygon,
  extentCm,
  joinPolygons,
  type Polygon,
  polygonAreaCm2,
} from '@/lib/domain/ground/polygon';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { areaOfQuarterRodsCm2 } from '@/lib/domain/quantity/area';
import { halvePlotInput, joinPlotsInput } from '@/lib/schemas/plots/plot';
import { readLengths } from '../ground/measure';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { refuseTaken } from './numbers';

type Part = {
  number: string;
  polygon: Polygon | null;
  quarterRods: number | null;
  areaCm2: number;
  holds: (bed: Footprint) => boolean;
};

/** Halve a plot from a day. Both parts keep its axes, so the ground's history needs no copying; they stay let as it was. */
export const halvePlot = mutation({
  name: 'halve-plot',
  allow: canRunSociety,
  input: halvePlotInput,
  write: async (context, input) => {
    const { tx, scope, note } = context;
    const plot = await plotById(tx, scope, input.plotId);
    if (!plot) throw new NotFound();
    await refuseTaken(
      context,
      plot.siteId,
      [
        ['firstNumber', input.firstNumber],
        ['secondNumber', input.secondNumber],
      ],
      [plot.number],
    );
    if (input.firstNumber.toLowerCase() === input.secondNumber.toLowerCase())
      refuse('plot-number-taken', { field: 'secondNumber', numbers: { number: input.secondNumber } });
    const axis: Axis = input.across === 'width' ? 'x' : 'y';
    const { at } = readLengths({ at: { field: 'at', what: 'where the cut lies', text: input.at } }, scope.units);
    const parts = plot.polygon
      ? cutMeasured(plot.polygon, axis, Math.round(at / 100), input)
      : cutRods(plot, axis, Math.round(at / 100), input);
    const childIds = await becomes(context, [plot], parts, input.from);
    note({
      verb: 'halved',
      thing: 'plot',
      thingId: plot.id,
      before: { number: plot.number },
      after: { into: parts.map(({ number }) => number), from: input.from },
    });
    return { plotIds: childIds };
  },
});

type Named = { firstNumber: string; secondNumber: string; rods: number | null };

function sidesOf(axis: Axis, atCm: number) {
  const along = (bed: Footprint) =>
    axis === 'x' ? { from: bed.xCm, to: bed.xCm + bed.widthCm } : { from: bed.yCm, to: bed.yCm + bed.lengthCm };
  return { before: (bed: Footprint) => along(bed).to <= atCm, after: (bed: Footprint) => along(bed).from >= atCm };
}

function cutMeasured(polygon: Polygon, axis: Axis, atCm: number, { firstNumber, secondNumber }: Named): Part[] {
  const { leastCm, mostCm } = extentCm(polygon, axis);
  if (atCm <= leastCm || atCm >= mostCm)
    refuse('cut-outside-plot', { field: 'at', numbers: { least: leastCm + 1, most: mostCm - 1 } });
  const [before, after] = cutPolygon(polygon, axis, atCm);
  const on = sidesOf(axis, atCm);
  return [
    { number: firstNumber, polygon: before, quarterRods: null, areaCm2: polygonAreaCm2(before), holds: on.before },
    { number: secondNumber, polygon: after, quarterRods: null, areaCm2: polygonAreaCm2(after), holds: on.after },
  ];
}

function cutRods(
  { quarterRods }: PlotOnDay,
  axis: Axis,
  atCm: number,
  { firstNumber, secondNumber, rods }: Named,
): Part[] {
  const all = quarterRods ?? 2;
  const first = rods ?? Math.ceil(all / 2);
  if (first >= all) refuse('cut-outside-plot', { field: 'rods', numbers: { least: 0.25, most: (all - 1) / 4 } });
  const on = sidesOf(axis, atCm);
  return [
    { number: firstNumber, polygon: null, quarterRods: first, areaCm2: areaOfQuarterRodsCm2(first), holds: on.before },
    {
      number: secondNumber,
      polygon: null,
      quarterRods: all - first,
      areaCm2: areaOfQuarterRodsCm2(all - first),
      holds: on.after,
    },
  ];
}

/** Join two plots from a day. The joined plot takes the first one's axes; beds keep the axes they were measured in. */
export const joinPlots = mutation({
  name: 'join-plots',
  allow: canRunSociety,
  input: joinPlotsInput,
  write: async (context, { plotId, otherId, number, from }) => {
    const { tx, scope, note } = context;
    const [plot, other] = [await plotById(tx, scope, plotId), await plotById(tx, scope, otherId)];
    if (!plot || !other) throw new NotFound();
    if (plot.id === other.id || plot.siteId !== other.siteId) refuse('join-needs-two', { field: 'otherId' });
    await refuseTaken(context, plot.siteId, [['number', number]], [plot.number, other.number]);
    const tenancies = [await lockTenancyOn(tx, scope, plot.id, from), await lockTenancyOn(tx, scope, other.id, from)];
    if (tenancies[0] && tenancies[1] && tenancies[0].holdingId !== tenancies[1].holdingId)
      refuse('join-different-holdings', { field: 'otherId' });
    const polygon = joinedPolygon(plot, other);
    if (plot.polygon && other.polygon && !polygon) refuse('join-apart', { field: 'otherId' });
    const quarterRods = polygon
      ? null
      : Math.max(1, Math.round(((plot.areaCm2 + other.areaCm2) * 4) / areaOfQuarterRodsCm2(4)));
    const part: Part = {
      number,
      polygon,
      quarterRods,
      areaCm2: polygon ? polygonAreaCm2(polygon) : plot.areaCm2 + other.areaCm2,
      holds: () => true,
    };
    const [childId = ''] = await becomes(context, [plot, other], [part], from);
    note({
      verb: 'joined',
      thing: 'plot',
      thingId: childId,
      before: { numbers: [plot.number, other.number] },
      after: { number, from },
    });
    return { plotId: childId };
  },
});

function joinedPolygon(plot: PlotOnDay, other: PlotOnDay): Polygon | null {
  if (!plot.polygon || !other.polygon) return null;
  if (plot.frameId === other.frameId) return joinPolygons(plot.polygon, other.polygon, 0);
  if (!plot.frame || !other.frame) return null;
  const [from, onto] = [other.frame, plot.frame];
  const moved = other.polygon.map((corner) => intoFrame(onto, toSite(from, corner)));
  return joinPolygons(plot.polygon, moved, 5);
}

function intoFrame(frame: Frame, point: { xCm: number; yCm: number }) {
  const back = toSite(
    { originXCm: 0, originYCm: 0, bearingCentideg: -frame.bearingCentideg },
    { xCm: point.xCm - frame.originXCm, yCm: point.yCm - frame.originYCm },
  );
  return { xCm: Math.round(back.xCm), yCm: Math.round(back.yCm) };
}

// Old plots end, new ones begin in the first one's frame; beds pass over with their lineage, tenancies go on.
async function becomes(
  { tx, scope }: WriteContext,
  old: readonly PlotOnDay[],
  parts: readonly Part[],
  from: CalendarDate,
): Promise<string[]> {
  const [first] = old;
  if (!first) throw new Error('a plot becomes something');
  const beds = await bedsStanding(
    tx,
    scope,
    from,
    from,
    old.map(({ id }) => id),
  );
  const homeless = beds.find(({ footprint }) => !parts.some(({ holds }) => holds(footprint)));
  if (homeless) refuse('cut-through-bed', { field: 'at', numbers: { bed: homeless.name } });
  const tenancies = await Promise.all(old.map(({ id }) => lockTenancyOn(tx, scope, id, from)));
  const began = tenancies.find((tenancy) => tenancy && tenancy.fromOn >= from);
  if (began) refuse('end-before-start', { field: 'from', numbers: { from: began.fromOn } });
  // The old numbers are free from now on: retire before the new ones are written.
  for (const { id } of old) await retirePlot(tx, scope, id, from, []);
  const { siteId, frameId } = first;
  const ids = await createPlots(
    tx,
    scope,
    parts.map(({ number, polygon, quarterRods, areaCm2 }) => ({
      siteId,
      number,
      polygon,
      quarterRods,
      areaCm2,
      fromOn: from,
      frame: { id: frameId },
    })),
  );
  for (const { id } of old) await retirePlot(tx, scope, id, from, ids);
  for (const bed of beds) {
    await retireBed(tx, scope, bed.id, from);
    const plotId = ids[parts.findIndex(({ holds }) => holds(bed.footprint))] ?? '';
    const [bedId = ''] = await createBeds(tx, scope, [
      { plotId, frameId: bed.frameId, name: bed.name, footprint: bed.footprint, typed: bed.typed, fromOn: from },
    ]);
    await noteBedLineage(tx, scope, [bed.id], bedId, from);
  }
  const holdingId = tenancies.find((tenancy) => tenancy !== null)?.holdingId;
  for (const tenancy of tenancies) if (tenancy) await endTenancyOn(tx, scope, tenancy.id, from);
  if (holdingId)
    await beginTenancies(
      tx,
      scope,
      ids.map((plotId) => ({ plotId, holdingId, fromOn: from })),
    );
  return ids;
}
