import type { SeasonApplied } from '../catalogue/nitrogen-availability';

const seasons: readonly SeasonApplied[] = ['winter', 'spring', 'summer', 'autumn'];

/**
 * The season in which a dressing goes on, as the availability tables part the year.
 *
 * @param month        1 to 12
 * @returns            autumn August to October, winter November to January, spring February to April, summer May to
 *                     July
 * @throws RangeError  outside 1 to 12
 * @source             AHDB, RB209 Section 2, availability of nitrogen from farmyard manure
 * @example            seasonApplied(11) → 'winter'
 */
export function seasonApplied(month: number): SeasonApplied {
  if (!Number.isSafeInteger(month) || month < 1 || month > 12) throw new RangeError(`no such month: ${month}`);
  // November comes first: winter runs over the turn of the year.
  return seasons[Math.floor(((month + 1) % 12) / 3)] ?? 'winter';
}
