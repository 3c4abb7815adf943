import 'server-only';
import type { Change } from '@/lib/data/member-setting';
import { allows, type Setting } from '@/lib/domain/catalogue/setting-row';
import type { Units } from '@/lib/domain/quantity/length';
import type { Kept } from '@/lib/domain/recipe/told';
import { boundsAsTyped, readTyped } from '@/lib/domain/recipe/typed-value';
import { type Refusal, Refused } from '../refusal';

/** A field of the form: its row, the key under which it is kept, and what was typed. */
export type TypedField<Key extends string> = {
  readonly field: string;
  readonly key: Key;
  readonly row: Setting;
  readonly text: string;
};

/**
 * What a form of recipes or habits changes: an empty field puts back what was set, and what stands as it was is left alone.
 * Everything that cannot be read is refused together, each beside its field.
 */
export function changesTyped<Key extends string>(
  fields: readonly TypedField<Key>[],
  kept: Kept,
  units: Units,
): Change<Key>[] {
  const refusals: Refusal[] = [];
  const read = fields.map(({ field, key, row, text }) => {
    const value = text === '' ? null : readTyped(row, text, units);
    if (text !== '' && value === null) refusals.push(refusalOf(field, row, units));
    return { key, value, was: allows(row, kept[key]) ? kept[key] : null };
  });
  if (refusals.length) throw new Refused(refusals);
  return read.filter(({ value, was }) => value !== was).map(({ key, value }) => ({ key, value }));
}

function refusalOf(field: string, row: Setting, units: Units): Refusal {
  const what = row.name;
  if (row.kind === 'choice') return { code: 'value-not-offered', field, numbers: { what } };
  if (row.kind === 'month-day') return { code: 'month-day-wrong', field, numbers: { what } };
  return { code: 'value-out-of-range', field, numbers: { what, ...boundsAsTyped(row, units) } };
}

/** What is kept once the changes are made. */
export function keptAfter(kept: Kept, changes: readonly Change<string>[]): Kept {
  return { ...kept, ...Object.fromEntries(changes.map(({ key, value }) => [key, value])) };
}
