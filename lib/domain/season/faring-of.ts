import type { Faring } from './season-account';

/**
 * How a claim fared in the share-out.
 *
 * @param claim  loads asked when booking closed, the share or null before the share-out, and whether it was given up
 * @returns      gave up, else met in full where the share is all that was asked, else short; null before the share-out
 * @example      asked 5, share 4 → short
 */
export function faringOf(claim: { readonly asked: number; readonly share: number | null; gaveUp: boolean }): Faring {
  if (claim.gaveUp) return 'gaveUp';
  if (claim.share === null) return null;
  return claim.share >= claim.asked ? 'metInFull' : 'short';
}
