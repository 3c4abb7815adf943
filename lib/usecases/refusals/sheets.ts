/** Why something about ground sheets was not done. */
export type SheetsRefusal =
  | 'group-wanted'
  | 'no-such-manure'
  | 'narrower-than-trench'
  | 'more-than-a-sheet'
  | 'nothing-to-lay'
  | 'sheet-begun'
  | 'sheet-taken-back'
  | 'no-such-trench'
  | 'trenches-before'
  | 'trenches-after';
