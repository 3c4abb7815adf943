/** Why a day of a planting was not recorded. */
export type DatesRefusal = 'day-to-come' | 'planted-before-sown' | 'day-of-another-season' | 'day-recorded';
