import type { HoldingStanding } from './holding';
import { canReadCommitteePapers, canRunSociety, type Standing } from './standing';

/** Whether the viewer keeps the ledger: the treasurer, and the secretary, since a society may have no treasurer. */
export function canKeepMoney(viewer: Standing): boolean {
  return viewer.roles.includes('treasurer') || canRunSociety(viewer);
}

/** Whether the viewer reads a holding's account: its own holders, and the committee. */
export function canSeeAccount(viewer: Standing, { memberIds }: Pick<HoldingStanding, 'memberIds'>): boolean {
  return canReadCommitteePapers(viewer) || memberIds.includes(viewer.memberId);
}
