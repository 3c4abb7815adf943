import { type EmergenceDays, emergenceDaysOf, soilTemperatureOf } from '../catalogue/soil-temperatures';
import type { SourceKey } from '../catalogue/sources';
import { celsiusOf } from '../quantity/temperature';

/** Whether seed comes up in a soil, and in how many days. */
export type Emergence =
  /** Below the printed least, or where the table says that none comes up [°C]. */
  | { readonly code: 'too-cold'; readonly leastC: number | null; readonly source: SourceKey }
  /** Warm enough; between these days, by the columns on either side of it, where they are printed. */
  | {
      readonly code: 'comes-up';
      readonly leastDays: number | null;
      readonly mostDays: number | null;
      readonly source: SourceKey;
    }
  | { readonly code: 'not-known' };

const columns = [
  [0, 'at0C'],
  [5, 'at5C'],
  [10, 'at10C'],
  [15, 'at15C'],
  [20, 'at20C'],
  [25, 'at25C'],
] as const satisfies readonly (readonly [number, keyof EmergenceDays])[];

/**
 * Whether a crop's seed comes up in soil of a warmth, and how long that takes.
 *
 * Method: too cold below the least soil temperature of the one table; days between the printed columns of the other on either side,
 * with nothing worked out between them. Above the last column its days are the most it takes. Near freezing the two tables disagree; the
 * least temperature goes first.
 *
 * @param cropKey  of the catalogue
 * @param soilC    soil at sowing depth, −20 to 60 [°C]
 * @returns        leastDays ≤ mostDays where both are printed
 * @throws RangeError on a warmth that is none
 * @source         Oregon State University Extension, 2013, after Harrington; Harrington and Minges, 1954
 * @example        parsnips in soil of 7 °C → comes up in 27 to 57 days; French beans in 10 °C → too cold, 15.6 °C is the least
 */
export function emergence(cropKey: string, soilC: number): Emergence {
  if (!(soilC >= -20 && soilC <= 60)) throw new RangeError(`a soil is −20 to 60 °C: ${soilC}`);
  const soil = soilTemperatureOf(cropKey);
  const days = emergenceDaysOf(cropKey);
  const leastC = soil ? celsiusOf(soil.leastF) : null;
  if (soil && leastC !== null && soilC < leastC) return { code: 'too-cold', leastC, source: soil.source };
  const colder = days && columns.findLast(([celsius]) => celsius <= soilC);
  const warmer = days && columns.find(([celsius]) => celsius >= soilC);
  if (days && colder && !warmer) {
    const mostDays = numberOf(days[colder[1]]);
    return { code: 'comes-up', leastDays: null, mostDays, source: days.source };
  }
  if (days && warmer && days[warmer[1]] === 'none') return { code: 'too-cold', leastC, source: days.source };
  if (days && warmer) {
    const printed = [numberOf(days[warmer[1]]), colder ? numberOf(days[colder[1]]) : null];
    const known = printed.filter((one) => one !== null);
    const mostDays = known.length === printed.length ? Math.max(...known) : null;
    return { code: 'comes-up', leastDays: known.length ? Math.min(...known) : null, mostDays, source: days.source };
  }
  return soil ? { code: 'comes-up', leastDays: null, mostDays: null, source: soil.source } : { code: 'not-known' };
}

function numberOf(printed: number | 'none' | null): number | null {
  return typeof printed === 'number' ? printed : null;
}
