import type { SoilFigures } from '../catalogue/soils';
import { wholeFrom } from '../quantity/checked';
import { checkedDressing, type Dressing } from './dressing';
import type { TrenchPlan } from './trench-plan';

/** All that the drawings are drawn from. */
export type Digging = {
  readonly plan: TrenchPlan;
  readonly dressing: Dressing;
  readonly soil: SoilFigures;
  /** What is folded in of the top when spring comes; null where nothing is. */
  readonly springFinishCm: number | null;
};

/**
 * A job that can be drawn.
 *
 * @param digging  spring finish in whole cm, 1 to two spits' depth, or null
 * @returns        the same job
 * @throws RangeError on any other finish, and as `checkedDressing`
 * @source         common practice
 * @example        a finish of 8 cm in spits of 25 → itself; of 51 → refused
 */
export function checkedDigging(digging: Digging): Digging {
  const { plan, dressing, springFinishCm } = digging;
  checkedDressing(dressing, plan.order.method);
  if (springFinishCm !== null && wholeFrom(1, springFinishCm) > 2 * plan.order.spitDepthCm)
    throw new RangeError(`the spring finish stays within two spits: ${springFinishCm}`);
  return digging;
}
