/** Why something about plots, holdings and the site was not done. */
export type PlotsRefusal =
  | 'csv-faults'
  | 'plot-number-taken'
  | 'plot-let-already'
  | 'plot-not-let'
  | 'end-before-start'
  | 'no-holder-chosen'
  | 'polygon-crosses-itself'
  | 'polygon-overlaps'
  | 'cut-outside-plot'
  | 'cut-through-bed'
  | 'beds-outside-drawing'
  | 'plot-measured-already'
  | 'join-needs-two'
  | 'join-different-holdings'
  | 'join-apart'
  | 'booker-not-holder'
  | 'site-name-taken';
