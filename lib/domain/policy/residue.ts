import { canRunSociety, type Standing } from './standing';

/** A residue test as the policy sees it: who started it, and whether it is of a delivery or of manure of their own. */
export type ResidueTestStanding = { readonly madeByMemberId: string; readonly deliveryId: string | null };

/** Whether the viewer sees a test: of a delivery everybody, of somebody's own manure nobody but them. */
export function canSeeResidueTest(viewer: Standing, { madeByMemberId, deliveryId }: ResidueTestStanding): boolean {
  return deliveryId !== null || madeByMemberId === viewer.memberId;
}

/** Whether the viewer keeps a test: whoever started it, and of a delivery the secretary too. */
export function canKeepResidueTest(viewer: Standing, { madeByMemberId, deliveryId }: ResidueTestStanding): boolean {
  return madeByMemberId === viewer.memberId || (deliveryId !== null && canRunSociety(viewer));
}
