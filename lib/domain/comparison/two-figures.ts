/**
 * A value to two figures: as much as a barrow scale and a tape tell, and less than would single a bed out.
 *
 * @param value  finite
 * @throws RangeError on a value that is no number
 * @source       common practice
 * @example      2,347 → 2,300; 0.0567 → 0.057; 0 → 0
 */
export function twoFigures(value: number): number {
  if (!Number.isFinite(value)) throw new RangeError(`no number: ${value}`);
  return Number(value.toPrecision(2));
}
