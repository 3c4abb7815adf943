/** Why something about residue tests was not done. */
export type ResidueRefusal =
  | 'sown-in-the-future'
  | 'sown-and-read'
  | 'not-sown-yet'
  | 'read-in-the-future'
  | 'read-before-sown'
  | 'read-that-day-already'
  | 'reading-not-there'
  | 'no-pot-read'
  | 'pot-not-there'
  | 'pot-half-read'
  | 'more-up-than-seeds'
  | 'more-distorted-than-up'
  | 'test-ended';
