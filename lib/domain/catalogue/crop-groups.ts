/** The unit that rotates, and what lies outside the rotation. */
export type CropGroup =
  | 'alliums'
  | 'brassicas'
  | 'legumes'
  | 'roots'
  | 'potatoes'
  | 'cucurbits'
  | 'leaves'
  | 'standing';

/** The groups in the order in which keys and tables list them. */
export const cropGroups: readonly { readonly key: CropGroup; readonly name: string }[] = [
  { key: 'alliums', name: 'Alliums' },
  { key: 'brassicas', name: 'Brassicas' },
  { key: 'legumes', name: 'Legumes' },
  { key: 'roots', name: 'Roots' },
  { key: 'potatoes', name: 'Potatoes and kin' },
  { key: 'cucurbits', name: 'Cucurbits' },
  { key: 'leaves', name: 'Leaves' },
  { key: 'standing', name: 'Outside the rotation' },
];

/** A group's word on the screen. */
export function cropGroupName(key: CropGroup): string {
  return cropGroups.find((group) => group.key === key)?.name ?? key;
}

/** Whether a text is one of the groups. */
export function isCropGroup(text: string): text is CropGroup {
  return cropGroups.some(({ key }) => key === text);
}
