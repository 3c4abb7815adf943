import { canRunSociety, type Standing } from './standing';

/** A holding as the policy sees it: who holds it today, and who alone books if the holders fell out. */
export type HoldingStanding = { readonly memberIds: readonly string[]; readonly bookerMemberId: string | null };

/** Whether the viewer works this ground: a holder of today, or the secretary for them. */
export function canKeepGround(viewer: Standing, holding: HoldingStanding | null): boolean {
  return canRunSociety(viewer) || (holding?.memberIds.includes(viewer.memberId) ?? false);
}

/** Whether the viewer books for the holding: any holder, unless the secretary named one of them. */
export function canBook(viewer: Standing, holding: HoldingStanding): boolean {
  if (canRunSociety(viewer)) return true;
  if (!holding.memberIds.includes(viewer.memberId)) return false;
  return holding.bookerMemberId === null || holding.bookerMemberId === viewer.memberId;
}

/** The holders beside somebody: equal rights mean that each learns what the other did. */
export function othersOf(holding: HoldingStanding, memberId: string): string[] {
  return holding.memberIds.filter((id) => id !== memberId);
}

/** Whether the viewer sees the holding's notes, yields and store: its holders only, not even the committee. */
export function canSeePrivateRecords(viewer: Standing, holding: HoldingStanding | null): boolean {
  return holding?.memberIds.includes(viewer.memberId) ?? false;
}
