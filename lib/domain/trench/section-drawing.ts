import { diggingMethodOf } from '../catalogue/digging-methods';
import { columnOf, drawnSwellPercent, heightOf, looseSpitCm } from './column';
import type { Digging } from './digging';
import {
  type Arrow,
  type Drawing,
  type Measure,
  middleOf,
  type Part,
  partBetween,
  type Spot,
  toTenth,
} from './drawing';
import { heapWaits, isDone, movementAt, type Progress, stateOf } from './progress';
import type { Trench } from './trench-plan';

/** So many trenches beside each other are drawn, the one in hand among them. */
const shownTrenches = 5;

type Frame = {
  readonly digging: Digging;
  readonly progress: Progress;
  /** In the order in which they lie along the run, each from its left edge. */
  readonly columns: readonly { readonly trench: Trench; readonly xCm: number }[];
  /** Where the first trench's soil waits, if that is beside what is drawn. */
  readonly heap: Part | null;
  readonly widthCm: number;
  readonly surfaceCm: number;
};

/**
 * The work seen from the side, to scale: the trench in hand with its neighbours of the same half, two spits deep.
 *
 * Method: columns of layers from the numbers of the plan, the dressing and the soil; the swell in the middle of its range,
 * none where it is not known. The heap stands a trench wide, beside the bed's end where it waits.
 *
 * @param digging   as `checkedDigging`
 * @param progress  hand: a trench's number
 * @returns         tenths of a centimetre; all stages of one job at the same scale and height
 * @throws RangeError as `columnOf`
 * @source          drawn from the numbers
 * @example         `stagesOf` draws each stage with it
 */
export function sectionOf(digging: Digging, progress: Progress): Drawing {
  const frame = frameOf(digging, progress);
  const { columns, heap, widthCm, surfaceCm } = frame;
  const parts = columns.flatMap(({ trench, xCm }) => columnParts(frame, trench, xCm));
  return {
    widthCm,
    heightCm: surfaceCm + 2 * digging.plan.order.spitDepthCm,
    surfaceCm,
    parts: heap ? [...parts, ...pathBelow(frame, heap), ...(heapWaits(digging.plan, progress) ? [heap] : [])] : parts,
    arrows: arrowsOf(frame),
    measures: measuresOf(frame),
  };
}

function frameOf(digging: Digging, progress: Progress): Frame {
  const { order, trenches } = digging.plan;
  const half = trenches[progress.hand - 1]?.half;
  const along = ({ footprint }: Trench) => (order.across === 'width' ? footprint.yCm : footprint.xCm);
  const inHalf = trenches.filter((trench) => trench.half === half).toSorted((a, b) => along(a) - along(b));
  const at = inHalf.findIndex(({ number }) => number === progress.hand);
  const from = Math.max(0, Math.min(at - Math.floor(shownTrenches / 2), inHalf.length - shownTrenches));
  const shown = inHalf.slice(from, from + shownTrenches);
  const first = trenches[0];
  const hasHeap = diggingMethodOf(order.method).opensTrench && shown.some(({ number }) => number === trenches.length);
  const heapCm = hasHeap && first ? first.widthCm : 0;
  // Back up the second half the last trench lies leftmost, and the heap beyond it.
  const startCm = (half === 'second' ? heapCm : 0) - Math.min(...shown.map(along));
  const runCm = shown.reduce((sum, { widthCm }) => sum + widthCm, 0);
  const surfaceCm = aboveCm(digging);
  const heapAt = { xCm: half === 'second' ? 0 : runCm, yCm: surfaceCm - looseSpitCm(digging) };
  return {
    digging,
    progress,
    columns: shown.map((trench) => ({ trench, xCm: startCm + along(trench) })),
    heap: hasHeap ? partBetween('heap', null, heapAt, { xCm: heapAt.xCm + heapCm, yCm: surfaceCm }) : null,
    widthCm: runCm + heapCm,
    surfaceCm,
  };
}

// The highest that anything will stand, in whole centimetres, so that the stages lie on one level.
function aboveCm(digging: Digging): number {
  const depthCm = 2 * digging.plan.order.spitDepthCm;
  const stands = (['undug', 'dressed', 'filled'] as const).map((state) => heightOf(columnOf(digging, state)) - depthCm);
  const heapCm = diggingMethodOf(digging.plan.order.method).opensTrench ? looseSpitCm(digging) : 0;
  return Math.ceil(toTenth(Math.max(0, heapCm, ...stands)));
}

function columnParts({ digging, progress, surfaceCm }: Frame, trench: Trench, xCm: number): Part[] {
  const { number, widthCm } = trench;
  const floorCm = surfaceCm + 2 * digging.plan.order.spitDepthCm;
  const between = (kind: Part['kind'], topCm: number, bottomCm: number) =>
    partBetween(kind, number, { xCm, yCm: topCm }, { xCm: xCm + widthCm, yCm: toTenth(bottomCm) });
  let topCm = floorCm;
  const parts = columnOf(digging, stateOf(digging.plan, progress, number)).map(({ kind, heightCm }) => {
    const bottomCm = topCm;
    topCm -= heightCm;
    return between(kind, topCm, bottomCm);
  });
  if (topCm > surfaceCm) parts.push(between('open', surfaceCm, topCm));
  return parts.filter(({ heightCm }) => heightCm > 0);
}

// The heap stands on ground that nobody digs.
function pathBelow({ digging, surfaceCm }: Frame, { xCm, widthCm }: Part): Part[] {
  const spitCm = digging.plan.order.spitDepthCm;
  return (['undug', 'subsoil'] as const).map((kind, at) => ({
    kind,
    trench: null,
    xCm,
    yCm: surfaceCm + at * spitCm,
    widthCm,
    heightCm: spitCm,
  }));
}

function arrowsOf({ digging, progress, columns, heap, surfaceCm }: Frame): Arrow[] {
  const movement = movementAt(digging.plan, progress);
  if (!movement) return [];
  const spotOf = (end: number | 'heap'): Spot | null => {
    if (end === 'heap') return heap && middleOf(heap);
    const column = columns.find(({ trench }) => trench.number === end);
    const yCm = surfaceCm + digging.plan.order.spitDepthCm / 2;
    return column ? { xCm: column.xCm + column.trench.widthCm / 2, yCm } : null;
  };
  const [from, to] = [spotOf(movement.from), spotOf(movement.to)];
  return from && to ? [{ code: movement.code, from, to }] : [];
}

function measuresOf({ digging, progress, columns, widthCm, surfaceCm }: Frame): Measure[] {
  const { plan, soil, springFinishCm } = digging;
  const { spitDepthCm, method } = plan.order;
  const floorCm = surfaceCm + 2 * spitDepthCm;
  const hand = isDone(progress) ? undefined : columns.find(({ trench }) => trench.number === progress.hand);
  const across = (code: Measure['code'], xCm: number, lengthCm: number): Measure => ({
    code,
    from: { xCm, yCm: floorCm },
    to: { xCm: xCm + lengthCm, yCm: floorCm },
    lengthCm,
  });
  const down = (code: Measure['code'], xCm: number, topCm: number, lengthCm: number): Measure => ({
    code,
    from: { xCm, yCm: topCm },
    to: { xCm, yCm: toTenth(topCm + lengthCm) },
    lengthCm,
  });
  const measures = hand ? [across('trench-width', hand.xCm, hand.trench.widthCm)] : [];
  measures.push(down('spit-depth', 0, surfaceCm, spitDepthCm));
  const isKnown = drawnSwellPercent(soil) !== null || diggingMethodOf(method).loosenedSpits === 0;
  const riseCm = toTenth(heightOf(columnOf(digging, 'filled')) - 2 * spitDepthCm);
  const topCm = toTenth(surfaceCm - riseCm);
  if (progress.phase === 'standing' && isKnown && riseCm > 0) measures.push(down('rise', widthCm, topCm, riseCm));
  if (progress.phase === 'finished' && springFinishCm !== null)
    measures.push(down('finish-depth', widthCm, topCm, springFinishCm));
  return measures;
}
