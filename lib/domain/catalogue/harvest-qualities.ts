/** How a harvest was, in a grower's words: whether it keeps is the store's to say. */
export const harvestQualities = [
  { key: 'good', name: 'good', says: 'as it should be' },
  { key: 'middling', name: 'middling', says: 'small or marked, and used all the same' },
  { key: 'poor', name: 'poor', says: 'used at once, or much of it wasted' },
] as const;

export type HarvestQuality = (typeof harvestQualities)[number]['key'];

export const harvestQualityKeys = harvestQualities.map(({ key }) => key);
