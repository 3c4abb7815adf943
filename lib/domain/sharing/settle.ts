import { type Claim, loadMillionths } from './claim';
import { shareOut } from './share-out';

export type Settlement = {
  /** Change of each claim's credit [10⁻⁶ load]. */
  readonly changes: readonly {
    readonly id: string;
    readonly dueMillionths: number;
    readonly receivedMillionths: number;
    readonly changeMillionths: number;
  }[];
  /** The remainder, so that the sum stays zero: to the line called "lapsed". */
  readonly lapsedMillionths: number;
};

/**
 * The credits of a delivery, written once when it is settled: what was due minus what was received.
 *
 * Method: the queue is run on the heap as it was measured, with the opening credits; a claim that was given up comes
 * with its asked lowered to what it collected. Loads taken beyond a share count as received, so they are owed to those
 * who went short by them. Loads that nobody collected, or that nobody had asked for, fall to the lapsed line.
 *
 * @param claims   with `collected`; whole numbers ≥ 0 [barrow-loads]
 * @returns        changes and a lapsed line that sum to exactly zero
 * @throws RangeError as `shareOut`
 * @source         common practice
 * @example        1 load, two equal claims: the one served −500,000, the other +500,000, lapsed 0
 */
export function settle(given: {
  readonly loads: number;
  readonly claims: readonly (Claim & { readonly collected: number })[];
  readonly lotSeed: string;
}): Settlement {
  const dues = new Map(shareOut(given).shares.map(({ id, dueMillionths }) => [id, dueMillionths]));
  const changes = given.claims.map(({ id, collected }) => {
    const dueMillionths = dues.get(id) ?? 0;
    const receivedMillionths = collected * loadMillionths;
    return { id, dueMillionths, receivedMillionths, changeMillionths: dueMillionths - receivedMillionths };
  });
  return { changes, lapsedMillionths: 0 - changes.reduce((sum, { changeMillionths }) => sum + changeMillionths, 0) };
}
