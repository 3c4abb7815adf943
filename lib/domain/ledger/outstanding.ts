import { wholeFrom } from '../quantity/checked';

/**
 * What is still to pay of one charge, where payments go to the oldest charges first.
 *
 * Method: what a holding owes is of its newest charges; so much of it as the charges after this one do not take up is of this.
 *
 * @param chargeMinor   the charge; whole number ≥ 0 [pence]
 * @param newerMinor    all charges that came after it and stand; whole number ≥ 0 [pence]
 * @param balanceMinor  what stands on the holding's account, below nothing where it is in credit; whole number [pence]
 * @returns             0 ≤ outstanding ≤ chargeMinor
 * @throws RangeError on amounts that are not whole, and on a charge below nothing
 * @source              the oldest debt first: common practice
 * @example             charged 300, then 500; 400 paid, so 400 are owed: of the second 400, of the first 0
 */
export function outstandingOf(chargeMinor: number, newerMinor: number, balanceMinor: number): number {
  wholeFrom(0, chargeMinor);
  wholeFrom(0, newerMinor);
  if (!Number.isSafeInteger(balanceMinor)) throw new RangeError(`money is in whole pence: ${balanceMinor}`);
  return Math.min(chargeMinor, Math.max(0, balanceMinor - newerMinor));
}
