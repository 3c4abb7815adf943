/** From the least to the most that sources allow. */
export type Span = { readonly least: number; readonly most: number };

/**
 * An amount at both ends of a published range; null where an end is not known, since unknown is no number.
 *
 * @param least, most  the range; numbers ≥ 0, or null
 * @param amountOf     what an end comes to
 * @throws RangeError  on a negative or upturned range, or one that is no number
 * @source             unknown is shown as unknown
 * @example            spanOf(15, 35, (percent) => percent * 2) → 30 to 70; spanOf(null, 35, …) → null
 */
export function spanOf(least: number | null, most: number | null, amountOf: (end: number) => number): Span | null {
  for (const end of [least, most])
    if (end !== null && !(end >= 0 && Number.isFinite(end)))
      throw new RangeError(`a range is of numbers from 0: ${end}`);
  if (least === null || most === null) return null;
  if (least > most) throw new RangeError(`a range goes upward: ${least} to ${most}`);
  return { least: amountOf(least), most: amountOf(most) };
}
