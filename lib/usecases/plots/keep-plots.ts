import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { plotById, plotsOn } from '@/lib/data/plot';
import { createPlots, createSite, drawPlotGround, siteById, sitesOf } from '@/lib/data/plot-store';
import type { Frame } from '@/lib/domain/ground/frame';
import { cornersOf, footprintOutside, isSimple, type Polygon, polygonAreaCm2 } from '@/lib/domain/ground/polygon';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { areaOfQuarterRodsCm2 } from '@/lib/domain/quantity/area';
import { addPlotInput, addSiteInput, drawPlotInput } from '@/lib/schemas/plots/plot';
import { readLengths } from '../ground/measure';
import { mutation } from '../operation';
import { NotFound, refuse } from '../refusal';
import { refuseTaken } from './numbers';
import { overlapsOnSite } from './plots-apart';
import { readCorners } from './read-corners';

/** Add a site to the society. */
export const addSite = mutation({
  name: 'add-site',
  allow: canRunSociety,
  input: addSiteInput,
  write: async ({ tx, scope, note }, { name }) => {
    if ((await sitesOf(tx, scope)).some((site) => site.name.toLowerCase() === name.toLowerCase()))
      refuse('site-name-taken', { field: 'name', numbers: { name } });
    const siteId = await createSite(tx, scope, name);
    note({ verb: 'added', thing: 'site', thingId: siteId, after: { name } });
    return { siteId };
  },
});

/** Add a plot by its number and rods; it can be drawn later, and is fully usable before. */
export const addPlot = mutation({
  name: 'add-plot',
  allow: canRunSociety,
  input: addPlotInput,
  write: async ({ tx, scope, today, note }, { siteId, number, rods: quarterRods }) => {
    if (!(await siteById(tx, scope, siteId))) throw new NotFound();
    await refuseTaken({ tx, scope }, siteId, [['number', number]]);
    const [plotId = ''] = await createPlots(tx, scope, [
      {
        siteId,
        number,
        quarterRods,
        polygon: null,
        frame: null,
        fromOn: today,
        areaCm2: areaOfQuarterRodsCm2(quarterRods),
      },
    ]);
    note({ verb: 'added', thing: 'plot', thingId: plotId, after: { number, quarterRods } });
    return { plotId };
  },
});

/** Draw a plot's boundary to scale: where it lies on the site, its bearing, and its corners or its size. */
export const drawPlot = mutation({
  name: 'draw-plot',
  allow: canRunSociety,
  input: drawPlotInput,
  write: async ({ tx, scope, today, note }, input) => {
    const plot = await plotById(tx, scope, input.plotId);
    if (!plot) throw new NotFound();
    const read = readLengths(
      {
        east: { field: 'east', what: 'the distance east', text: input.east || '0 cm' },
        south: { field: 'south', what: 'the distance south', text: input.south || '0 cm' },
      },
      scope.units,
    );
    const frame: Frame = {
      originXCm: Math.round(read.east / 100),
      originYCm: Math.round(read.south / 100),
      bearingCentideg: input.bearing,
    };
    const polygon = input.corners.trim() ? readCorners(input.corners, scope.units) : rectangle(input, scope.units);
    if (!isSimple(polygon)) refuse('polygon-crosses-itself', { field: 'corners' });
    const others = (await plotsOn(tx, scope, today, { siteId: plot.siteId })).filter(({ id }) => id !== plot.id);
    const over = overlapsOnSite({ frame, polygon }, others);
    if (over)
      refuse('polygon-overlaps', { field: input.corners.trim() ? 'corners' : 'width', numbers: { number: over } });
    const beds = await bedsStanding(tx, scope, today, today, [plot.id]);
    const outside = beds.find((bed) => bed.frameId === plot.frameId && footprintOutside(bed.footprint, polygon));
    if (outside) refuse('beds-outside-drawing', { field: 'corners', numbers: { bed: outside.name } });
    const areaCm2 = polygonAreaCm2(polygon);
    await drawPlotGround(tx, scope, plot, { frame, polygon, areaCm2 });
    note({
      verb: 'drawn',
      thing: 'plot',
      thingId: plot.id,
      before: { areaCm2: plot.areaCm2 },
      after: { number: plot.number, areaCm2, ...frame },
    });
    return { plotId: plot.id };
  },
});

function rectangle(typed: { width: string; length: string }, units: 'metric' | 'imperial'): Polygon {
  const { width, length } = readLengths(
    {
      width: { field: 'width', what: 'the width', text: typed.width },
      length: { field: 'length', what: 'the length', text: typed.length },
    },
    units,
  );
  for (const [field, tenthMm] of [
    ['width', width],
    ['length', length],
  ] as const)
    if (tenthMm < 5000) refuse('plot-too-small', { field, numbers: { least: 50 } });
  return cornersOf({ xCm: 0, yCm: 0, widthCm: Math.round(width / 100), lengthCm: Math.round(length / 100) });
}
