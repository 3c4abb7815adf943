import type { SourceKey } from './sources';

// Some hold that these need no place in the course; the society decides.
const fitsAnywhere = {
  says: 'they may stand anywhere, if not too often in one place; then 0 or 1',
  source: 'rhs-rotation',
} as const;

type HostGroupRow = {
  readonly key: string;
  readonly name: string;
  readonly breakYears: number;
  readonly source: SourceKey;
  /** What another authority holds. */
  readonly otherwise?: { readonly says: string; readonly source: SourceKey };
};

/**
 * The sets of crops that one soil-borne trouble attacks, each with its routine break in clear years. Not the crop
 * groups: swede and radish are dug as roots but are hosts of clubroot; beetroot and chard share their troubles.
 */
// biome-ignore format: one group a line
export const hostGroups = [
  { key: 'allium-kin', name: 'Onion kin', breakYears: 3, source: 'common-practice' },
  { key: 'brassica-kin', name: 'Cabbage kin', breakYears: 3, source: 'common-practice' },
  { key: 'legume-kin', name: 'Pea and bean kin', breakYears: 3, source: 'common-practice' },
  { key: 'carrot-kin', name: 'Carrot kin', breakYears: 3, source: 'common-practice' },
  { key: 'potato-kin', name: 'Potato kin', breakYears: 3, source: 'common-practice' },
  { key: 'beet-kin', name: 'Beet kin', breakYears: 3, source: 'common-practice' },
  { key: 'cucurbit-kin', name: 'Cucumber kin', breakYears: 3, source: 'common-practice', otherwise: fitsAnywhere },
  { key: 'lettuce-kin', name: 'Lettuce kin', breakYears: 3, source: 'common-practice', otherwise: fitsAnywhere },
] as const satisfies readonly HostGroupRow[];

export type HostGroup = (typeof hostGroups)[number]['key'];

/** Whether a text is one of the host groups. */
export function isHostGroup(text: string): text is HostGroup {
  return hostGroups.some(({ key }) => key === text);
}

/** A host group's word on the screen. */
export function hostGroupName(key: string): string {
  return hostGroups.find((group) => group.key === key)?.name ?? key;
}

/**
 * The clear years between two crops in a rotation of so many years.
 *
 * @param rotationYears  whole years ≥ 1
 * @returns              one year fewer
 * @throws RangeError    below one year
 * @source               American Crystal Sugar Company, Ag Note 334: 2 → 1, 3 → 2, … 8 → 7
 * @example              clearYearsOfRotation(4) → 3
 */
export function clearYearsOfRotation(rotationYears: number): number {
  if (!Number.isSafeInteger(rotationYears) || rotationYears < 1)
    throw new RangeError(`a rotation is whole years from 1: ${rotationYears}`);
  return rotationYears - 1;
}
