import { type CalendarDate, monthOf } from '../calendar/calendar-date';
import { materialOf } from '../catalogue/materials';
import { mealOf } from '../catalogue/meals';
import type { ManuredSoil } from '../catalogue/nitrogen-availability';
import { manureStateOf } from '../food-safety/manure-state';
import { areaCm2, type Footprint } from '../ground/footprint';
import { likelyDay, type WorkTime } from '../ground/work-day';
import { wholeFrom } from '../quantity/checked';
import { manureAgeOf } from './manure-age';
import { seasonApplied } from './season-applied';
import { type Supply, supplyOf } from './supply';

/** Manure, compost or meal put on some ground, as far as it is on record. */
export type FeedingWork = WorkTime & {
  readonly id: string;
  readonly footprint: Footprint;
  readonly materialKey: string | null;
  /** On the whole footprint [g]. */
  readonly massG: number | null;
  readonly ageMonths: number | null;
  readonly incorporated: boolean;
};

export type DressingOn = {
  readonly work: FeedingWork;
  readonly on: CalendarDate;
  /** Null where nobody said how much. */
  readonly rateGPerM2: number | null;
  /** Null where the amount or the material is not known. */
  readonly supply: Supply | null;
  /** What was not on record, and was therefore left open or assumed. */
  readonly reasons: readonly ('amount-not-known' | 'material-not-known' | 'day-assumed' | 'age-assumed')[];
};

/**
 * What a piece of logged work brings to its ground.
 *
 * Method: the weight over the footprint's area, rounded to the nearest gram a square metre, by `supplyOf`. Without a day it
 * counts as of 1 November, without an age as stored for three months or longer; both are said.
 *
 * @param work  massG and ageMonths whole numbers ≥ 0 or null
 * @param soil  the column of the availability table
 * @returns     the rate and the supply, null where they are not known
 * @throws RangeError on a weight or an age that is none
 * @source      as `supplyOf`
 * @example     60 kg of horse manure on 12 m² → 5,000 g/m², 25,000 mg/m² N
 */
export function dressingOn(work: FeedingWork, soil: ManuredSoil): DressingOn {
  const { footprint, materialKey, massG, ageMonths, incorporated, doneOn } = work;
  for (const value of [massG, ageMonths]) wholeFrom(0, value ?? 0);
  const on = likelyDay(work);
  const isMeal = mealOf(materialKey ?? '') !== undefined;
  const isKnown = isMeal || materialOf(materialKey ?? '') !== undefined;
  const rateGPerM2 = massG === null ? null : Math.round((massG * 10_000) / areaCm2(footprint));
  const application = {
    soil,
    incorporated,
    applied: seasonApplied(monthOf(on)),
    age: ageMonths === null ? ('old' as const) : manureAgeOf(manureStateOf(materialKey, ageMonths)?.state ?? 'rotted'),
  };
  return {
    work,
    on,
    rateGPerM2,
    supply:
      rateGPerM2 === null || !isKnown ? null : supplyOf({ ...application, materialKey: materialKey ?? '', rateGPerM2 }),
    reasons: [
      ...(massG === null ? ['amount-not-known' as const] : []),
      ...(isKnown ? [] : ['material-not-known' as const]),
      ...(doneOn === null ? ['day-assumed' as const] : []),
      ...(ageMonths === null && !isMeal ? ['age-assumed' as const] : []),
    ],
  };
}
