import { canReadCommitteePapers, canEnter, type Standing } from './standing';
import { canSeePrivateRecords, type HoldingStanding } from './holding';

/** Whether the viewer proposes a trial: any member, since it binds nobody who does not join it. */
export function canProposeTrial(viewer: Standing): boolean {
  return canEnter(viewer);
}

/** Whether the viewer calls a trial off: whoever proposed it, and the committee. */
export function canCallOffTrial(viewer: Standing, trial: { readonly byMemberId: string }): boolean {
  return trial.byMemberId === viewer.memberId || canReadCommitteePapers(viewer);
}

/** Whether the viewer joins a trial with a holding's ground, and gives its results: yields are its holders' own. */
export function canKeepBlock(viewer: Standing, holding: HoldingStanding | null): boolean {
  return canSeePrivateRecords(viewer, holding);
}
