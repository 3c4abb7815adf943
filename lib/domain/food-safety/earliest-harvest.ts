import { addDays, addMonths, type CalendarDate } from '../calendar/calendar-date';
import { cropContactOf, type Eaten, type SoilContact } from '../catalogue/contact';
import { type HarvestInterval, harvestIntervals, type ManureState } from '../catalogue/harvest-intervals';
import type { SourceKey } from '../catalogue/sources';
import { wholeFrom } from '../quantity/checked';

export type ManuredGround = {
  readonly manuredOn: CalendarDate;
  readonly state: ManureState;
  /** Whole months in the heap, where anybody knows; null: the least that the state means. */
  readonly monthsHeaped: number | null;
  readonly incorporated: boolean;
};

export type HarvestRule = {
  readonly key: string;
  readonly earliestOn: CalendarDate;
  /** Whether it has a say in the date that is given. */
  readonly counts: boolean;
  readonly source: SourceKey;
};

export type EarliestHarvest = {
  /** By the strictest published rule that applies; the day of manuring itself where none asks for a wait. */
  readonly earliestOn: CalendarDate;
  readonly decidedBy: string | null;
  readonly rules: readonly HarvestRule[];
  readonly reasons: readonly ('contact-not-known' | 'laid-on-the-surface' | 'months-not-known')[];
};

/** How a crop meets the soil; null where nobody said. */
export type Meeting = { readonly contact: SoilContact; readonly eaten: Eaten };

// The least that each state means: raw is under three months, young under a year.
const leastMonths: Readonly<Record<ManureState, number>> = { raw: 0, young: 3, rotted: 12, composted: 0 };

/**
 * The earliest day on which a crop should be harvested after its ground had manure, by every published rule that
 * applies.
 *
 * Method: each rule's wait is counted from the day of manuring; the latest of the published ones sets the date, and all
 * are returned. Splashed counts as contact; often eaten raw counts as raw; a crop that nobody knows counts as both. The
 * waits are written for manure worked in; on the surface they are counted just so, and that is said.
 *
 * @param ground   when and what; months in the heap whole number ≥ 0
 * @param meeting  of the crop, by `meetingOf` or as the grower says; null is taken at its strictest
 * @returns        earliestOn ≥ the day of manuring; guidance, not a guarantee
 * @throws RangeError on months that are none
 * @source         7 CFR 205.203(c)(1); Food Standards Agency, earlier guidance; RHS, Alternatives to fertiliser
 * @example        raw, 1 January 2027, parsnips (contact, cooked) → 1 May; runner beans (clear, cooked) → 1 April
 */
export function earliestHarvest(ground: ManuredGround, meeting: Meeting | null): EarliestHarvest {
  if (ground.monthsHeaped !== null) wholeFrom(0, ground.monthsHeaped);
  const { contact, eaten } = meeting ?? { contact: 'touches-soil', eaten: 'raw' };
  const rules = harvestIntervals
    .filter((rule) => rule.states.includes(ground.state))
    .filter((rule) => rule.contact === 'any' || (rule.contact === 'with-soil') === (contact !== 'clear'))
    .filter((rule) => !rule.rawOnly || eaten !== 'cooked')
    .map((rule) => ({ key: rule.key, earliestOn: dayOf(rule, ground), counts: rule.counts, source: rule.source }));
  const deciding = rules
    .filter(({ counts }) => counts)
    .reduce<HarvestRule | null>((last, rule) => (last && last.earliestOn >= rule.earliestOn ? last : rule), null);
  return {
    earliestOn: deciding?.earliestOn ?? ground.manuredOn,
    decidedBy: deciding?.key ?? null,
    rules,
    reasons: [
      ...(meeting ? [] : (['contact-not-known'] as const)),
      ...(ground.incorporated ? [] : (['laid-on-the-surface'] as const)),
      ...(ground.monthsHeaped === null ? (['months-not-known'] as const) : []),
    ],
  };
}

function dayOf({ wait }: HarvestInterval, { manuredOn, state, monthsHeaped }: ManuredGround): CalendarDate {
  if ('days' in wait) return addDays(manuredOn, wait.days);
  if ('months' in wait) return addMonths(manuredOn, wait.months);
  const months = monthsHeaped ?? leastMonths[state];
  return addMonths(manuredOn, Math.max(0, wait.monthsOfAge - months));
}

/** How a crop of the catalogue meets the soil; null for one that it does not know. */
export function meetingOf(cropKey: string): Meeting | null {
  return cropContactOf(cropKey) ?? null;
}
