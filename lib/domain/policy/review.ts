import { canEnter, canReadCommitteePapers, type Standing } from './standing';

/** Whether the viewer reads the season review: every member. What it says of single holdings follows `canReadSeasonPaper`. */
export function canReadReview(viewer: Standing): boolean {
  return canEnter(viewer);
}

/** Whether the viewer reads, and prints, what the landlord is given: the committee. */
export function canReadLandlordReview(viewer: Standing): boolean {
  return canReadCommitteePapers(viewer);
}
