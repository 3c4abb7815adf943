import type { Setting } from '@/lib/domain/catalogue/setting-row';
import { citation, type SourceKey, standingOf } from '@/lib/domain/catalogue/sources';
import { formatMonthDay } from '@/lib/domain/calendar/month-day';
import { formatRate } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import type { SetBy } from '@/lib/domain/recipe/told';
import { asTyped } from '@/lib/domain/recipe/typed-value';

/** A value of a recipe or a habit in words, with its unit. */
export function valueInWords(row: Setting, value: string | number, units: Units): string {
  if (row.kind === 'choice') return row.choices.find(({ key }) => key === value)?.name ?? String(value);
  if (row.kind === 'month-day') return formatMonthDay(String(value));
  if (row.unit === 'g/m²') return value === 0 ? 'none' : formatRate(Number(value), units);
  // A weight of nothing is none yet: a jar that nobody has weighed.
  if (row.unit === 'g' && value === 0) return 'not weighed';
  if (row.unit === 'cm' || row.unit === 'tenths of pH') return asTyped(row, value, units);
  return `${value} ${row.unit}`;
}

/** Who set a value, as what it is. */
export const setByWords: Readonly<Record<SetBy, string>> = {
  yours: 'yours',
  society: 'the society’s',
  catalogue: 'the catalogue’s',
};

/** A source in one line: its publisher and title, or how far the value may be relied on without one. */
export function sourceWords(source: SourceKey): string {
  return standingOf(source) === 'published' ? citation(source) : standingOf(source);
}
