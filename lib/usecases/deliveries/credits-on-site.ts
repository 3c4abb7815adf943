/** The credits of a material on the whole site: the largest that any holding is owed, what lapsed, and the sum, which is nothing. */
export type CreditsOnSite = {
  readonly largestMillionths: number;
  readonly lapsedMillionths: number;
  readonly sumMillionths: number;
};

/** @param credits  by holding, in millionths of a load; the lapsed line under the empty text */
export function creditsOnSite(credits: ReadonlyMap<string, number>): CreditsOnSite {
  const ofHoldings = [...credits].filter(([holdingId]) => holdingId !== '').map(([, millionths]) => millionths);
  return {
    largestMillionths: ofHoldings.reduce((most, one) => Math.max(most, one), 0),
    lapsedMillionths: credits.get('') ?? 0,
    sumMillionths: [...credits.values()].reduce((sum, one) => sum + one, 0),
  };
}
