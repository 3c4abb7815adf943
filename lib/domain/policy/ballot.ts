import { canReadCommitteePapers, type Standing } from './standing';

/** Whether the viewer puts questions to a count of hands, and reads those that are not put yet: the committee. */
export function canPutToHands(viewer: Standing): boolean {
  return canReadCommitteePapers(viewer);
}

/** Whether the viewer reads a question: every member, once it was put. */
export function canReadBallot(viewer: Standing, { openedAt }: { readonly openedAt: Date | null }): boolean {
  return openedAt !== null || canPutToHands(viewer);
}
