import { randomUUID } from 'node:crypto';
import type { Prisma } from '@/generated/prisma/client';
import { cropOf } from '@/lib/domain/catalogue/crops';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { cornersOf, type Polygon, polygonAreaCm2 } from '@/lib/domain/ground/polygon';
import { areaOfQuarterRodsCm2 } from '@/lib/domain/quantity/area';
import type { Chance } from '../chance';

const day = (text: string) => new Date(`${text}T00:00:00Z`);

/** Rows of plots on either side of the cart track; the lower two lie along a bend. [first corner cm, bearing 1/100°] */
const rows = [
  { letter: 'A', xCm: 400, yCm: 400, bearing: 0, plots: 11, lengthCm: 2100 },
  { letter: 'B', xCm: 400, yCm: 3000, bearing: 0, plots: 11, lengthCm: 1900 },
  { letter: 'C', xCm: 250, yCm: 5500, bearing: 430, plots: 11, lengthCm: 2000 },
  { letter: 'D', xCm: 80, yCm: 8050, bearing: 430, plots: 10, lengthCm: 2200 },
];

export type DemoPlot = { id: string; frameId: string; number: string; beds: { id: string; footprint: Footprint }[] };

/** The ground of the demo society: frames, plots and beds, to scale. */
export function makeGround(
  chance: Chance,
  ids: { societyId: string; siteId: string },
  from: string,
  extra: { number: string; quarterRods: number },
) {
  const frames: Prisma.FrameCreateManyInput[] = [];
  const plots: Prisma.PlotCreateManyInput[] = [];
  const beds: Prisma.BedCreateManyInput[] = [];
  const made: DemoPlot[] = [];
  const { societyId } = ids;
  for (const row of rows) {
    const turn = (row.bearing * Math.PI) / 18_000;
    let along = 0;
    for (let nth = 1; nth <= row.plots; nth++) {
      const widthCm = chance.whole(15, 19) * 50;
      const plot: DemoPlot = { id: randomUUID(), frameId: randomUUID(), number: `${row.letter}${nth}`, beds: [] };
      frames.push({
        ...ids,
        id: plot.frameId,
        originXCm: Math.round(row.xCm + along * Math.cos(turn)),
        originYCm: Math.round(row.yCm + along * Math.sin(turn)),
        bearingCentideg: row.bearing,
      });
      const polygon = slanted(chance, widthCm, row.lengthCm, nth === row.plots);
      plots.push({
        ...ids,
        id: plot.id,
        frameId: plot.frameId,
        number: plot.number,
        polygon: polygon.map(({ xCm, yCm }) => [xCm, yCm]),
        areaCm2: polygonAreaCm2(polygon),
        fromOn: day(from),
      });
      plot.beds = bedsFor(chance, widthCm, row.lengthCm);
      beds.push(
        ...plot.beds.map(({ id, footprint }, at) => ({
          id,
          societyId,
          plotId: plot.id,
          frameId: plot.frameId,
          name: String(at + 1),
          ...footprint,
          fromOn: day(from),
        })),
      );
      made.push(plot);
      along += widthCm + chance.whole(1, 2) * 60;
    }
  }
  const frameId = randomUUID();
  const plotId = randomUUID();
  frames.push({ ...ids, id: frameId });
  plots.push({
    ...ids,
    id: plotId,
    frameId,
    number: extra.number,
    quarterRods: extra.quarterRods,
    areaCm2: areaOfQuarterRodsCm2(extra.quarterRods),
    fromOn: day(from),
  });
  return { frames, plots, beds, made, unmeasured: { id: plotId, frameId } };
}

// The foot of a plot follows the hedge; the last one of a row is cut off by it.
function slanted(chance: Chance, widthCm: number, lengthCm: number, last: boolean): Polygon {
  const [left, right] = [lengthCm + chance.whole(0, 3) * 20, lengthCm + chance.whole(0, 3) * 20];
  const corners = cornersOf({ xCm: 0, yCm: 0, widthCm, lengthCm });
  return corners.map((corner, at) =>
    at === 2 ? { ...corner, yCm: last ? lengthCm - 300 : right } : at === 3 ? { ...corner, yCm: left } : corner,
  );
}

// Beds lie across the plot, a path apart; some growers measure in feet.
function bedsFor(chance: Chance, widthCm: number, lengthCm: number): DemoPlot['beds'] {
  const inFeet = chance.next() < 0.4;
  const [deep, path] = inFeet ? [chance.one([183, 213, 244]), 61] : [chance.one([180, 200, 240]), 60];
  const wide = widthCm - 120;
  const count = Math.min(6, Math.floor((lengthCm - 480) / (deep + path)));
  return Array.from({ length: count }, (_, nth) => ({
    id: randomUUID(),
    footprint: { xCm: 60, yCm: 160 + nth * (deep + path), widthCm: wide, lengthCm: deep },
  }));
}

/** What each group is grown as, here. */
const sorts: Record<string, readonly string[]> = {
  alliums: ['onion', 'leek', 'garlic', 'shallot'],
  brassicas: ['kale', 'brussels-sprout', 'winter-cabbage', 'cauliflower', 'purple-sprouting'],
  legumes: ['runner-bean', 'broad-bean', 'pea', 'french-bean'],
  roots: ['carrot', 'parsnip', 'beetroot'],
  potatoes: ['maincrop-potato', 'early-potato'],
  cucurbits: ['winter-squash', 'courgette'],
  leaves: ['lettuce', 'chard', 'spinach'],
};
const course = ['alliums', 'brassicas', 'legumes', 'roots', 'potatoes', 'cucurbits'] as const;

type Habit = 'keeps' | 'careless' | 'forgetful' | 'newcomer';

/** How a plot's holder keeps the rotation and the record. */
function habitOf(number: string): Habit {
  if (['A5', 'B9', 'C6', 'D2', 'D7'].includes(number)) return 'careless';
  if (['A2', 'A7', 'B1', 'B10', 'C2', 'C9', 'D4', 'D8'].includes(number)) return 'forgetful';
  return number === 'C10' ? 'newcomer' : 'keeps';
}

/** Six seasons and, for some, the next: what stood on each bed, with breaks kept, not kept and not recorded. */
export function makePlantings(
  chance: Chance,
  societyId: string,
  plot: DemoPlot,
  holdingId: string | null,
  thisYear: number,
): Prisma.PlantingCreateManyInput[] {
  const habit = habitOf(plot.number);
  const plans = habit === 'keeps' && chance.next() < 0.55;
  const years = Array.from({ length: plans ? 7 : 6 }, (_, at) => thisYear - 5 + at);
  const rows: Prisma.PlantingCreateManyInput[] = [];
  const shift = chance.whole(0, 5);
  for (const [nth, bed] of plot.beds.entries()) {
    const standing =
      nth === plot.beds.length - 1 && chance.next() < 0.3 ? chance.one(['rhubarb', 'asparagus', 'strawberry']) : null;
    for (const [at, year] of years.entries()) {
      if (habit === 'forgetful' && chance.next() < 0.55) continue;
      if (habit === 'newcomer' && year === thisYear - 1) continue;
      if (standing) {
        if (at === 0) rows.push(row(standing, bed.footprint, year, 2200));
        continue;
      }
      const careless = habit === 'careless' && nth < 2;
      const group = careless
        ? nth === 0
          ? 'potatoes'
          : 'brassicas'
        : (course[(nth + at + shift) % course.length] ?? 'leaves');
      rows.push(...split(group, bed.footprint, year));
    }
  }
  return rows;

  function split(group: string, ground: Footprint, year: number): Prisma.PlantingCreateManyInput[] {
    if (chance.next() < 0.06) return [row('bare', ground, year, year)];
    if (chance.next() > 0.25) return [row(chance.one(sorts[group] ?? []), ground, year, year)];
    const first = Math.round((ground.widthCm * chance.whole(3, 6)) / 10);
    const other = group === 'cucurbits' ? 'leaves' : group;
    return [
      row(chance.one(sorts[group] ?? []), { ...ground, widthCm: first }, year, year),
      row(
        chance.one(sorts[other] ?? []),
        { ...ground, xCm: ground.xCm + first, widthCm: ground.widthCm - first },
        year,
        year,
      ),
    ];
  }

  function row(
    cropKey: string,
    ground: Footprint,
    firstSeason: number,
    lastSeason: number,
  ): Prisma.PlantingCreateManyInput {
    if (cropKey !== 'bare' && !cropOf(cropKey)) throw new Error(`the catalogue lacks ${cropKey}`);
    const bed = plot.beds.find(({ footprint }) => footprint.yCm === ground.yCm);
    return {
      societyId,
      frameId: plot.frameId,
      bedId: bed?.id ?? '',
      holdingId,
      cropKey,
      ...ground,
      firstSeason,
      lastSeason,
      planned: firstSeason > thisYear,
    };
  }
}

/** When the beds were last manured: a third each year, as far as it was logged. */
export function makeManurings(
  chance: Chance,
  societyId: string,
  plot: DemoPlot,
  holdingId: string | null,
  thisYear: number,
): Prisma.GroundWorkCreateManyInput[] {
  if (habitOf(plot.number) === 'forgetful') return [];
  return plot.beds.flatMap(({ footprint }, nth) => {
    const season = thisYear + 1 - ((nth + chance.whole(0, 1)) % 3) - 1;
    return chance.next() < 0.12
      ? []
      : [
          {
            societyId,
            frameId: plot.frameId,
            holdingId,
            ...footprint,
            season,
            materialKey: 'horse-manure',
            loads: null,
          },
        ];
  });
}
