import type { CalendarDate } from '../calendar/calendar-date';
import { autumn } from '../catalogue/autumn';
import { materialOf } from '../catalogue/materials';

/** What a standing booking is for: manure of any sort that feeds turns, or straw. */
export const standingFor = ['manure', 'straw'] as const;
export type StandingFor = (typeof standingFor)[number];

export type Standing = {
  readonly serves: StandingFor;
  readonly autumnOnly: boolean;
  readonly mostLoads: number | null;
};

/**
 * Whether a standing booking is for a delivery.
 *
 * @param standing  what it serves, and whether in autumn only
 * @param delivery  its material, and the day it comes
 * @returns         false for a material that the catalogue does not know
 * @source          autumn: the catalogue's, common practice
 * @example         manure in autumn only: horse manure on 2026-11-14 → true; on 2027-03-01 → false
 */
export function standsFor(
  { serves, autumnOnly }: Pick<Standing, 'serves' | 'autumnOnly'>,
  { materialKey, arrivesOn }: { readonly materialKey: string; readonly arrivesOn: CalendarDate },
): boolean {
  const monthDay = arrivesOn.slice(5);
  if (autumnOnly && (monthDay < autumn.from || monthDay > autumn.to)) return false;
  return serves === 'straw' ? materialKey === 'straw' : (materialOf(materialKey)?.feedsTurns ?? false);
}

/**
 * What a standing booking asks of a delivery: the need, up to its own limit and the delivery's.
 *
 * @param need  whole number ≥ 0 [loads]
 * @returns     whole number ≥ 0; 0 books nothing
 * @throws RangeError on a need that is none
 * @example     need 7, own limit 5, no cap → 5
 */
export function standingAsks(need: number, mostLoads: number | null, capLoads: number | null): number {
  if (!Number.isSafeInteger(need) || need < 0) throw new RangeError(`a need is in whole loads: ${need}`);
  return Math.min(need, mostLoads ?? need, capLoads ?? need);
}
