/** Why something about paths and drop points was not done. */
export type PathsRefusal =
  | 'path-point-wrong'
  | 'path-too-far'
  | 'path-without-length'
  | 'path-too-many-points'
  | 'too-many-paths'
  | 'lorry-part-wrong'
  | 'lorry-part-backwards'
  | 'lorry-part-beyond'
  | 'place-wrong'
  | 'place-too-far'
  | 'drop-point-name-taken'
  | 'drop-point-awaited'
  | 'drop-point-gone'
  | 'drop-point-elsewhere';
