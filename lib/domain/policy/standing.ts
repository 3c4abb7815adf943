/** What a person may act as in one society. A member may hold several offices. */
export type Role = 'secretary' | 'treasurer' | 'chair' | 'gate_helper';

/** A viewer's standing in the society at hand, read from the database for each request. */
export type Standing = { readonly memberId: string; readonly roles: readonly Role[] };

/** Whether the viewer runs the society: members, plots, deliveries, settings. */
export function canRunSociety(viewer: Standing): boolean {
  return viewer.roles.includes('secretary');
}

/** Whether the viewer reads what the committee reads: the members' list, the book of changes, accounts. */
export function canReadCommitteePapers(viewer: Standing): boolean {
  return viewer.roles.some((role) => role === 'secretary' || role === 'treasurer' || role === 'chair');
}

/** Whether the viewer ticks off other people's loads at the heap. */
export function canTickOffForOthers(viewer: Standing): boolean {
  return viewer.roles.some((role) => role === 'secretary' || role === 'gate_helper');
}

/** Every member of the society: the plan, the deliveries, their own ground. */
export function canEnter(viewer: Standing): boolean {
  return viewer.memberId !== '';
}
