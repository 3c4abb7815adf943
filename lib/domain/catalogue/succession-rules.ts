import type { SourceKey } from './sources';

/** General rules on what follows what. They advise: a society may leave them off. */
export type SuccessionRule = {
  readonly key: 'brassicas-after-legumes' | 'roots-off-manure' | 'potatoes-off-lime' | 'standing-apart';
  readonly name: string;
  readonly says: string;
  readonly source: SourceKey;
};

// biome-ignore format: one rule a line
export const successionRules: readonly SuccessionRule[] = [
  { key: 'brassicas-after-legumes', name: 'Brassicas follow legumes', says: 'Greens use what peas and beans leave. Other courses put roots before them; then leave this off.', source: 'allotment-guide-1945' },
  { key: 'roots-off-manure', name: 'Long roots, not on fresh manure', says: 'Carrots and parsnips fork in ground manured for their own season.', source: 'common-practice' },
  { key: 'potatoes-off-lime', name: 'Potatoes, not straight after lime', says: 'Lime brings scab: none for their season or the one before.', source: 'common-practice' },
  { key: 'standing-apart', name: 'Standing crops, outside the rotation', says: 'Rhubarb, asparagus and soft fruit keep ground of their own, and do not stand where a rotated crop is planned.', source: 'common-practice' },
];

/** A rule by its key. */
export function ruleOf(key: SuccessionRule['key']): SuccessionRule {
  const rule = successionRules.find((one) => one.key === key);
  if (!rule) throw new RangeError(`no such rule: ${key}`);
  return rule;
}
