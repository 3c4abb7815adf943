/** Why something about harvests was not done. */
export type HarvestRefusal =
  | 'harvest-weight-wrong'
  | 'harvest-count-wrong'
  | 'harvest-in-the-future'
  | 'harvest-before-sown'
  | 'harvest-out-of-season';
