import { canReadCommitteePapers, canTickOffForOthers, type Standing } from './standing';

/** What the loads that are to be wheeled were taken from. */
export type LoadsBasis = 'shares' | 'bookings' | 'need';

/**
 * Whether the viewer sees other people's loads plot by plot. Shares are everybody's, and so are the bookings once the lot is
 * out; before that they are the office's, as what the ground asks for is the committee's.
 */
export function canSeeLoadsByPlot(
  viewer: Standing,
  { basis, lotIsOut }: { readonly basis: LoadsBasis; readonly lotIsOut: boolean },
): boolean {
  if (basis === 'shares') return true;
  if (basis === 'bookings') return lotIsOut || canTickOffForOthers(viewer);
  return canReadCommitteePapers(viewer);
}
