import { diggingMethodOf } from '../catalogue/digging-methods';
import type { Trench, TrenchPlan } from './trench-plan';

/** One top spit on its way: out of a trench, and into the one it fills. */
export type SoilMove = {
  readonly from: number;
  readonly to: number;
  /** Opening: kept until the last is filled. Turn: across at the far end, where the second half begins. Throw: one trench back. */
  readonly kind: 'opening' | 'throw' | 'turn';
  /** As it lay, before it swelled [mL]. */
  readonly volumeMl: number;
  /** From the middle of the one trench to the middle of the other; whole or half centimetres. */
  readonly distanceCm: number;
};

/**
 * Where each trench's top spit goes: the first fills the last, each other goes one trench back.
 *
 * Method: distances from middle to middle. Wherever the first spit waits meanwhile, only its way is counted.
 *
 * @param plan  any plan
 * @returns     one move for each trench in order of work, each trench left once and filled once; none where nothing is opened
 * @throws RangeError as `diggingMethodOf`
 * @source      common practice
 * @example     3 trenches straight through → 1 to 3 (opening), 2 to 1, 3 to 2 (throws)
 */
export function soilMoves({ order, trenches }: TrenchPlan): SoilMove[] {
  if (!diggingMethodOf(order.method).opensTrench) return [];
  return trenches.flatMap((trench, at) => {
    const filled = at === 0 ? trenches.at(-1) : trenches[at - 1];
    if (!filled) return [];
    const { lengthCm, widthCm } = trench;
    return {
      from: trench.number,
      to: filled.number,
      kind: at === 0 ? 'opening' : trench.half === filled.half ? 'throw' : 'turn',
      volumeMl: lengthCm * widthCm * order.spitDepthCm,
      distanceCm: betweenMiddlesCm(trench, filled),
    };
  });
}

// Every move goes either along the run or along the trench: one of the two differences is nothing.
function betweenMiddlesCm(one: Trench, other: Trench): number {
  const [a, b] = [one.footprint, other.footprint];
  const alongX = 2 * (a.xCm - b.xCm) + a.widthCm - b.widthCm;
  const alongY = 2 * (a.yCm - b.yCm) + a.lengthCm - b.lengthCm;
  return (Math.abs(alongX) + Math.abs(alongY)) / 2;
}
