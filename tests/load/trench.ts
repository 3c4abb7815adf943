import { soilOf } from '@/lib/domain/catalogue/soils';
import { lessCarrying } from '@/lib/domain/trench/carrying';
import type { Dressing } from '@/lib/domain/trench/dressing';
import { layersOf } from '@/lib/domain/trench/layers';
import { riseOf } from '@/lib/domain/trench/layer-heights';
import { openingBarrows, soilMoved } from '@/lib/domain/trench/soil-moved';
import { stagesOf } from '@/lib/domain/trench/stages';
import { trenchPlan } from '@/lib/domain/trench/trench-plan';
import { type Measured, sideBySide } from './side-by-side';
import { figure, type Section } from './table';

/** So many sheets a run, so that one of a few trenches is measurable. */
const sheets = 200;

/** Ground sheets of ever longer beds, drawings and all, beside plain sorts. */
export function measureTrench(): Section {
  const rows = [12, 48, 192, 768].map(sheetsOf);
  return {
    title: 'Ground sheets: plan, soil, both layouts, layers and the drawing of every stage',
    notes: [
      `${sheets} sheets a run on one core, double digging in two halves. Beside them as many sorts of a number for each trench.`,
    ],
    heads: ['trenches', 'sheets a second', 'µs a sheet', 'times a plain sort', 'growth', 'heap, MB'],
    rows: rows.map(({ size, ms, besideMs, heapMb }, at) => {
      const before = rows[at - 1];
      return [
        figure(size),
        figure((sheets * 1000) / ms),
        figure((ms * 1000) / sheets),
        figure(ms / besideMs, 1),
        before ? `${figure(ms / before.ms, 1)} for ${figure(size / before.size)} times the size` : '',
        figure(heapMb),
      ];
    }),
  };
}

function sheetsOf(trenches: number): Measured {
  const numbers = Array.from({ length: trenches }, (_, at) => (at * 7919) % 1_000_003);
  // One after another, none kept: it is the work that is measured, not the keeping.
  const many = (work: (sheet: number) => unknown) => () => {
    for (let sheet = 0; sheet < sheets; sheet++) work(sheet);
  };
  return sideBySide(
    trenches,
    many((sheet) => sheetOf(trenches, sheet)),
    many((sheet) => numbers.map((number) => number ^ sheet).sort((a, b) => a - b)),
  );
}

// Each sheet a bed of another width, so that none is worked out twice.
function sheetOf(trenches: number, sheet: number) {
  const soil = soilOf('loamy');
  if (!soil) throw new Error('no loam');
  const order = {
    bed: { widthCm: 120 + sheet, lengthCm: trenches * 30 },
    across: 'width',
    trenchWidthCm: 60,
    spitDepthCm: 25,
    method: 'double-digging',
    layout: 'two-halves',
  } as const;
  const dressing: Dressing = {
    manure: { densityGPerL: 400, bottomGPerM2: 3000, topGPerM2: 2000, barrowLitres: 85 },
    meals: [{ key: 'hoof-and-horn', gPerM2: 70, into: 'bottom', jarG: 230 }],
    strawGPerM2: 500,
  };
  const plan = trenchPlan(order);
  const moved = soilMoved(plan, soil);
  return {
    moved,
    barrows: openingBarrows(moved, 85),
    carrying: lessCarrying(order, soil),
    layers: layersOf(plan, dressing),
    rise: riseOf(plan, soil, dressing),
    stages: stagesOf({ plan, dressing, soil, springFinishCm: 6 }),
  };
}
