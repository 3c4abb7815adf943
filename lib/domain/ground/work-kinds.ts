/** What can be done to ground: dug, or given one material. Manure alone resets the turn. */
export const workKinds = ['dug', 'manured', 'fed', 'limed', 'strawed'] as const;

export type WorkKind = (typeof workKinds)[number];
