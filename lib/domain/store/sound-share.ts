import { lossModel } from '../catalogue/store-model';
import { positive } from '../quantity/checked';

/** What is lost by the end of a life, as a cumulative hazard. */
export const lifeHazard = -Math.log(lossModel.lifeSoundPermille.value / 1000);

/**
 * Hazard that a piece has gathered by an age, in lives: 1 at the end of one, from where it goes on rising ever faster.
 *
 * @param ageDays   ≥ 0 [days]; 0 where it is not older than that
 * @param lifeDays  > 0 [days]
 */
export function livesGathered(ageDays: number, lifeDays: number): number {
  return (Math.max(0, ageDays) / lifeDays) ** lossModel.shape.value;
}

/**
 * The share of a lot that is still sound at an age, if its life is known.
 *
 * Method: a Weibull curve, exp(−h × (age ÷ life) ^ shape). The shape, 2.36, is that of the one printed curve (winter squash), so
 * losses come ever faster; h is set so that 70 % is sound at the end of the life.
 *
 * @param ageDays   since it was put in; ≥ 0 [days]
 * @param lifeDays  > 0 [days]
 * @returns         0 to 1; 1 at age 0, 0.7 at the end of the life
 * @throws RangeError on anything else
 * @source          Oregon State University work, as quoted by the University of California, Davis; see the catalogue
 * @example         soundShare(63, 105) → 0.9 (nine weeks of a life of fifteen)
 */
export function soundShare(ageDays: number, lifeDays: number): number {
  if (!(ageDays >= 0 && ageDays <= 1e6)) throw new RangeError(`an age is a number of days from 0: ${ageDays}`);
  return Math.exp(-lifeHazard * livesGathered(ageDays, positive(lifeDays, 'a life')));
}
