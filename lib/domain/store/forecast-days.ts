// Daily for a week, then ever further apart, as what can be said grows vaguer: three years in all.
const spans: readonly (readonly [to: number, by: number])[] = [
  [7, 1],
  [21, 2],
  [61, 4],
  [187, 7],
  [369, 14],
  [1097, 28],
];

/** Days from today on which a forecast looks; today is the first [days]. */
export const forecastDays: readonly number[] = spans.reduce<number[]>(
  (days, [to, by]) => {
    const from = days.at(-1) ?? 0;
    return [...days, ...Array.from({ length: Math.floor((to - from) / by) }, (_, at) => from + (at + 1) * by)];
  },
  [0],
);

/**
 * The day by which what is likely has sunk to a share, on a straight line between the days looked at.
 *
 * @param likely  for each of `forecastDays`, never rising
 * @param share   0 to 1
 * @returns       days from today, not whole; null where it is likelier than that to the end
 * @example       1 today, 0 tomorrow, share 0.5 → 0.5
 */
export function dayOfShare(likely: readonly number[], share: number): number | null {
  const at = likely.findIndex((one) => one <= share);
  if (at <= 0) return at === 0 ? 0 : null;
  const [before, after] = [likely[at - 1] ?? 1, likely[at] ?? 0];
  const [from, to] = [forecastDays[at - 1] ?? 0, forecastDays[at] ?? 0];
  return from + ((before - share) / (before - after)) * (to - from);
}

/**
 * What is likely on a day between those looked at; as on the last of them beyond it.
 *
 * @param likely  for each of `forecastDays`
 * @param day     from today, ≥ 0 [days]
 */
export function likelyOn(likely: readonly number[], day: number): number {
  const after = forecastDays.findIndex((one) => one >= day);
  if (after <= 0) return likely[after === 0 ? 0 : likely.length - 1] ?? 0;
  const [from, to] = [forecastDays[after - 1] ?? 0, forecastDays[after] ?? 0];
  const [one, other] = [likely[after - 1] ?? 0, likely[after] ?? 0];
  return one + ((day - from) / (to - from)) * (other - one);
}
