/** Why something about suppliers and what they bring was not done. */
export type SuppliersRefusal = 'supplier-name-taken' | 'trailer-size-missing' | 'bale-weight-missing';
