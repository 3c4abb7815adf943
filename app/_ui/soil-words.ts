import { emergenceDaysOf, soilTemperatureOf } from '@/lib/domain/catalogue/soil-temperatures';
import { celsiusOf } from '@/lib/domain/quantity/temperature';
import type { Units } from '@/lib/domain/quantity/length';
import { emergence } from '@/lib/domain/seed/emergence';

/** Warmth in the member's units, to a tenth of a degree: 4.4 °C, 40 °F. */
export function warmthWords(celsius: number, units: Units): string {
  const shown = units === 'imperial' ? (celsius * 9) / 5 + 32 : celsius;
  return `${Number(shown.toFixed(1))} °${units === 'imperial' ? 'F' : 'C'}`;
}

/** The least soil that a crop's seed comes up in; null where nobody prints it. */
export function leastSoilWords(cropKey: string, units: Units): string | null {
  const soil = soilTemperatureOf(cropKey);
  return soil ? warmthWords(celsiusOf(soil.leastF), units) : null;
}

/** The soil that it comes up best in; null where nobody prints it. */
export function bestSoilWords(cropKey: string, units: Units): string | null {
  const soil = soilTemperatureOf(cropKey);
  if (!soil) return null;
  const [from, to] = [soil.bestFromF, soil.bestToF].map((one) => warmthWords(celsiusOf(one), units));
  return `${from?.replace(/ °[CF]$/, '')} to ${to}`;
}

const columns = ['at5C', 'at10C', 'at15C', 'at20C', 'at25C'] as const;

/** Days to emerge in soil of 5, 10, 15, 20 and 25 °C, as printed; null where nobody prints them. */
export function emergenceColumns(cropKey: string): string[] | null {
  const days = emergenceDaysOf(cropKey);
  return days ? columns.map((column) => (days[column] === 'none' ? 'none' : String(days[column]))) : null;
}

/** Whether a crop's seed comes up in a soil, and how long that takes. */
export function emergenceWords(cropKey: string, soilC: number, units: Units): string {
  const found = emergence(cropKey, soilC);
  if (found.code === 'not-known') return 'not known';
  if (found.code === 'too-cold')
    return found.leastC === null ? 'too cold: none comes up' : `too cold: wait for ${warmthWords(found.leastC, units)}`;
  const { leastDays, mostDays } = found;
  if (leastDays === null) return mostDays === null ? 'warm enough; days not known' : `up within ${mostDays} days`;
  if (mostDays === null) return `up in ${leastDays} days or more`;
  return leastDays === mostDays ? `up in ${leastDays} days` : `up in ${leastDays} to ${mostDays} days`;
}
