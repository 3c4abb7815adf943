import type { Apart } from './plants-on';

/** How a grower sows a crop, over what is printed; null where they leave it as it is printed. */
export type OwnSowing = {
  readonly apart: Apart | null;
  readonly from: 'seed' | 'sets' | null;
  readonly germinationPercent: number | null;
  readonly marginPercent: number | null;
};

/** The bounds of what may be said [cm, percent]. */
export const sowingBounds = { apartCm: 500, marginPercent: 400 } as const;

/**
 * What was kept of somebody's sowing; null where nothing was, or nothing that can be read.
 *
 * @param kept   as it was kept, of whatever shape
 * @returns      whole numbers within the bounds, null for what is none
 * @example      ownSowingOf({ apart: { rowsCm: 30, inRowCm: 10 } }) → those distances, the rest null
 */
export function ownSowingOf(kept: unknown): OwnSowing | null {
  if (kept === null || typeof kept !== 'object') return null;
  const { apart, from, germinationPercent, marginPercent } = kept as Record<string, unknown>;
  const { rowsCm, inRowCm } = (apart ?? {}) as Record<string, unknown>;
  const [rows, inRow] = [wholeWithin(rowsCm, 1, sowingBounds.apartCm), wholeWithin(inRowCm, 1, sowingBounds.apartCm)];
  const own: OwnSowing = {
    apart: rows !== null && inRow !== null ? { rowsCm: rows, inRowCm: inRow } : null,
    from: from === 'seed' || from === 'sets' ? from : null,
    germinationPercent: wholeWithin(germinationPercent, 1, 100),
    marginPercent: wholeWithin(marginPercent, 0, sowingBounds.marginPercent),
  };
  return Object.values(own).every((value) => value === null) ? null : own;
}

function wholeWithin(value: unknown, least: number, most: number): number | null {
  return Number.isSafeInteger(value) && Number(value) >= least && Number(value) <= most ? Number(value) : null;
}
