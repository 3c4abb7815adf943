/** Why something about deliveries was not done. */
export type DeliveriesRefusal = 'not-yet';
