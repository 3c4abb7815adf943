import { compostHeat } from '../catalogue/harvest-intervals';
import { wholeFrom } from '../quantity/checked';
import { celsiusOf } from '../quantity/temperature';

/** What was measured in a heap: one reading a day, and how often it was turned while it was hot. */
export type HeapHeat = {
  readonly method: 'vessel' | 'windrow';
  readonly dailyCelsius: readonly number[];
  readonly turnings: number;
};

/**
 * Whether manure was heated into compost, so that no wait for raw manure applies to it.
 *
 * Method: days between the two published temperatures are counted; three are wanted in a vessel or under forced air,
 * fifteen in a turned windrow with five turnings.
 *
 * @param heat        daily readings [°C]; turnings whole number ≥ 0
 * @returns           true only on readings that show it: a heap that nobody measured is not composted in this sense
 * @throws RangeError on a reading that is no number, or turnings that are none
 * @source            7 CFR 205.203(c)(2): 131 to 170 °F, 3 days, or 15 days with 5 turnings
 * @example           windrow, fifteen readings of 60 °C, five turnings → true; four turnings → false
 */
export function madeByHeat({ method, dailyCelsius, turnings }: HeapHeat): boolean {
  wholeFrom(0, turnings);
  const coolest = celsiusOf(compostHeat.leastFahrenheit);
  const hottest = celsiusOf(compostHeat.mostFahrenheit);
  const hotDays = dailyCelsius.filter((celsius) => {
    if (!Number.isFinite(celsius)) throw new RangeError(`a reading is a number: ${celsius}`);
    return celsius >= coolest && celsius <= hottest;
  }).length;
  const wanted = compostHeat[method];
  return hotDays >= wanted.days && turnings >= wanted.turnings;
}
