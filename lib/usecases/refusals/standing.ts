/** Why something about standing bookings was not done. */
export type StandingRefusal = 'stands-already';
