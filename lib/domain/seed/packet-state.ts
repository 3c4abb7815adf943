import type { Season } from '../calendar/season-of';
import { type SeedLife, seedLifeOf } from '../catalogue/seed-lives';

/** How far a packet may be relied on in a season. */
export type PacketState = {
  readonly code: 'tested' | 'sound' | 'test-first' | 'past' | 'year-unknown' | 'life-unknown';
  /** Years since it was packed; null where that is not known. */
  readonly ageYears: number | null;
  readonly life: SeedLife | null;
};

/**
 * Whether seed in the tin is still good in a season.
 *
 * Method: sound while it is younger than the published life of its kind in favourable storage, to be tested first in the last year of
 * it, past after. A tin in a shed is no favourable storage: sound is no promise. What nobody knows is never good. A test of one's own goes
 * before all that is published.
 *
 * @param cropKey     of the catalogue
 * @param packedYear  as printed on the packet; null where it can't be read
 * @param season      in which it is to be sown
 * @param testedPercent  how many of a hundred came up in a test of one's own; null where there was none
 * @returns           a code and its numbers
 * @throws RangeError on years that are not whole, and on seed packed after the season
 * @source            Iowa State University Extension, Life Expectancy of Vegetable Seeds, 1999
 * @example           leeks packed in 2025: 2026 sound, 2027 test-first, 2028 past
 */
export function packetState(
  cropKey: string,
  packedYear: number | null,
  season: Season,
  testedPercent: number | null = null,
): PacketState {
  const life = seedLifeOf(cropKey) ?? null;
  if (testedPercent !== null)
    return { code: 'tested', ageYears: packedYear === null ? null : ageIn(packedYear, season), life };
  if (packedYear === null) return { code: 'year-unknown', ageYears: null, life };
  const ageYears = ageIn(packedYear, season);
  if (!life) return { code: 'life-unknown', ageYears, life };
  if (ageYears < life.years) return { code: 'sound', ageYears, life };
  return { code: ageYears === life.years ? 'test-first' : 'past', ageYears, life };
}

function ageIn(packedYear: number, season: Season): number {
  if (!Number.isSafeInteger(season) || !Number.isSafeInteger(packedYear) || season < packedYear)
    throw new RangeError(`packed in ${packedYear}, to be sown in ${season}`);
  return season - packedYear;
}

/** Whether a packet counts towards what is in hand: sound seed does, seed that is tested first, and seed that was tested. */
export function countsInHand({ code }: PacketState): boolean {
  return code === 'sound' || code === 'test-first' || code === 'tested';
}
