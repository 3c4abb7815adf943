import { diggingMethodOf } from '../catalogue/digging-methods';
import { type Footprint, footprint } from '../ground/footprint';
import { columnOf } from './column';
import type { Digging } from './digging';
import { type Arrow, type Drawing, type Measure, middleOf, type Part, type PartKind } from './drawing';
import { heapWaits, isDone, movementAt, type Progress, stateOf, type TrenchState } from './progress';
import type { TrenchPlan } from './trench-plan';

/**
 * The work seen from above, to scale: the whole bed as it lies on its plot, with the first trench's soil where it waits.
 *
 * Method: each trench by what lies uppermost in it; the heap a trench wide beside the last trench to be filled.
 *
 * @param digging   as `checkedDigging`
 * @param progress  hand: a trench's number
 * @returns         whole centimetres; one part a trench in order of work, then the heap while it waits
 * @throws RangeError as `columnOf`
 * @source          drawn from the numbers
 * @example         `stagesOf` draws each stage with it
 */
export function planOf(digging: Digging, progress: Progress): Drawing {
  const { plan } = digging;
  const { bed } = plan.order;
  const heap = heapOf(plan);
  const bedAt = { xCm: heap ? Math.max(0, -heap.xCm) : 0, yCm: heap ? Math.max(0, -heap.yCm) : 0 };
  const partAt = (kind: PartKind, trench: number | null, ground: Footprint): Part => ({
    kind,
    trench,
    xCm: bedAt.xCm + ground.xCm,
    yCm: bedAt.yCm + ground.yCm,
    widthCm: ground.widthCm,
    heightCm: ground.lengthCm,
  });
  const seen = uppermost(digging);
  const trenches = plan.trenches.map((one) =>
    partAt(seen(stateOf(plan, progress, one.number)), one.number, one.footprint),
  );
  const heaps = heap ? [partAt('heap', null, heap)] : [];
  const all = [...trenches, ...heaps];
  return {
    widthCm: Math.max(bedAt.xCm + bed.widthCm, ...heaps.map((part) => part.xCm + part.widthCm)),
    heightCm: Math.max(bedAt.yCm + bed.lengthCm, ...heaps.map((part) => part.yCm + part.heightCm)),
    surfaceCm: null,
    parts: heapWaits(plan, progress) ? all : trenches,
    arrows: arrowsOf(plan, progress, trenches, heaps[0]),
    measures: isDone(progress) ? [] : measuresOf(plan, trenches[progress.hand - 1]),
  };
}

// Beyond the far end; in two halves beyond the near end of the second half.
function heapOf({ order, runCm, trenches }: TrenchPlan): Footprint | null {
  const [first, last] = [trenches[0], trenches.at(-1)];
  if (!first || !last || !diggingMethodOf(order.method).opensTrench) return null;
  const alongCm = order.layout === 'straight-through' ? runCm : -first.widthCm;
  return order.across === 'width'
    ? footprint(last.footprint.xCm, alongCm, last.lengthCm, first.widthCm)
    : footprint(alongCm, last.footprint.yCm, first.widthCm, last.lengthCm);
}

function uppermost(digging: Digging): (state: TrenchState) => PartKind {
  const seen = new Map<TrenchState, PartKind>();
  for (const state of ['undug', 'dressed', 'filled', 'finished'] as const) {
    const top = columnOf(digging, state).at(-1);
    if (top) seen.set(state, top.kind);
  }
  return (state) => seen.get(state) ?? 'open';
}

function arrowsOf(plan: TrenchPlan, progress: Progress, trenches: readonly Part[], heap: Part | undefined): Arrow[] {
  const movement = movementAt(plan, progress);
  if (!movement) return [];
  const [from, to] = [movement.from, movement.to].map((end) => (end === 'heap' ? heap : trenches[end - 1]));
  return from && to ? [{ code: movement.code, from: middleOf(from), to: middleOf(to) }] : [];
}

function measuresOf({ order }: TrenchPlan, hand: Part | undefined): Measure[] {
  if (!hand) return [];
  const { xCm, yCm, widthCm, heightCm } = hand;
  const isAcross = order.across === 'width';
  return [
    {
      code: isAcross ? 'trench-length' : 'trench-width',
      from: { xCm, yCm },
      to: { xCm: xCm + widthCm, yCm },
      lengthCm: widthCm,
    },
    {
      code: isAcross ? 'trench-width' : 'trench-length',
      from: { xCm, yCm },
      to: { xCm, yCm: yCm + heightCm },
      lengthCm: heightCm,
    },
  ];
}
