/** Why something about ground was not done. */
export type GroundRefusal = 'not-yet';
