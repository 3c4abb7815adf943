/** Why something about plots was not done. */
export type PlotsRefusal = 'not-yet';
