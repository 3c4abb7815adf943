import { canReadCommitteePapers, type Standing } from './standing';

/** Whether the viewer reads what a season came to: the committee, and every member where the society lets them. */
export function canReadSeasonPaper(viewer: Standing, readBy: string): boolean {
  return readBy === 'members' ? viewer.memberId !== '' : canReadCommitteePapers(viewer);
}
