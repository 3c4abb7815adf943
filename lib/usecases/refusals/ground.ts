/** Why something about beds, plantings and manuring was not done. */
export type GroundRefusal =
  | 'bed-overlaps'
  | 'bed-outside-plot'
  | 'bed-too-small'
  | 'length-wrong'
  | 'cut-outside-bed'
  | 'beds-do-not-join'
  | 'bed-name-taken'
  | 'crop-unknown'
  | 'trouble-unknown'
  | 'found-in-the-future'
  | 'part-outside-bed'
  | 'cleared-before-sown'
  | 'day-or-season'
  | 'season-out-of-range'
  | 'plantings-faults'
  | 'crop-name-taken'
  | 'bed-retired';
