/** Why a day of a planting was not recorded. */
export type DatesRefusal = 'planted-before-sown' | 'day-of-another-season' | 'day-recorded';
