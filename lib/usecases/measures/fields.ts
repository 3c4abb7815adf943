import 'server-only';
import { readArea } from '@/lib/domain/quantity/area';
import { parseLength, type Units } from '@/lib/domain/quantity/length';
import { readMass, readSmallMass } from '@/lib/domain/quantity/mass';
import { parseShortLength } from '@/lib/domain/quantity/short-length';
import { readVolumeMl } from '@/lib/domain/quantity/volume';
import { readTyped } from '@/lib/domain/recipe/typed-value';
import type { Outcome, Refusal } from '../refusal';
import type { MeasuresRefusal } from '../refusals/measures';

/** What was typed into a form that asks, by field. */
export type Typed = Readonly<Record<string, string>>;

type Fault = { readonly fault: MeasuresRefusal; readonly numbers?: Record<string, number> };
type Read<Value> = { readonly value: Value } | Fault;
/** How a field is read, in the member's own units. */
export type Field<Value> = (text: string, units: Units) => Read<Value>;

type Values<Fields> = { readonly [Name in keyof Fields]: Fields[Name] extends Field<infer Value> ? Value : never };

/** Read the fields of a form that asks: all of them, or what is wrong beside each. */
export function readFields<Fields extends Readonly<Record<string, Field<unknown>>>>(
  fields: Fields,
  typed: Typed,
  units: Units,
): Outcome<Values<Fields>> {
  const refusals: Refusal[] = [];
  const read = Object.entries(fields).map(([field, reader]) => {
    const found = reader((typed[field] ?? '').trim(), units);
    if ('fault' in found) {
      const { fault: code, numbers } = found;
      refusals.push({ code, field, ...(numbers ? { numbers } : {}) });
    }
    return [field, 'value' in found ? found.value : null];
  });
  if (refusals.length) return { ok: false, refusals };
  return { ok: true, value: Object.fromEntries(read) as Values<Fields> };
}

/** One thing wrong, beside its field. */
export function wrong(code: MeasuresRefusal, ...fields: readonly string[]): { ok: false; refusals: Refusal[] } {
  return { ok: false, refusals: fields.map((field) => ({ code, field })) };
}

function within<Value extends number>(
  value: Value | null,
  [least, most]: readonly [number, number],
  fault: MeasuresRefusal,
): Read<Value> {
  return value !== null && value >= least && value <= most ? { value } : { fault, numbers: { least, most } };
}

const noMost = 1e12;
const anything = 1e-6;

/** A length above nothing, in centimetres. */
export const aLength: Field<number> = (text, units) => lengthFrom(anything, text, units);
/** A length that may be nothing, in centimetres. */
export const aLengthOrNone: Field<number> = (text, units) => lengthFrom(0, text, units);

function lengthFrom(least: number, text: string, units: Units): Read<number> {
  const length = parseLength(text, units);
  return within(length.ok ? length.tenthMm / 100 : null, [least, noMost], 'length-wanted');
}

/** How thick something lies, up to a metre, in centimetres. */
export const aThickness: Field<number> = (text, units) => {
  const length = parseShortLength(text, units);
  return within(length.ok ? length.tenthMm / 100 : null, [0.1, 100], 'thickness-wanted');
};

/** An area, in whole square centimetres. */
export const anArea: Field<number> = (text, units) => within(readArea(text, units), [1, noMost], 'area-wanted');

/** What a bucket holds, in litres. */
export const aVolume: Field<number> = (text) => {
  const volumeMl = readVolumeMl(text, 'l');
  return within(volumeMl === null ? null : volumeMl / 1000, [0.1, noMost], 'volume-wanted');
};

/** A weight, in whole grams; nothing weighs nothing. */
export const aMass: Field<number> = (text, units) => within(readMass(text, units), [0, noMost], 'mass-wanted');
/** A weight of something, in whole grams. */
export const aMassOfSomething: Field<number> = (text, units) =>
  within(readMass(text, units), [1, noMost], 'mass-wanted');

/** What a bale weighs, in whole grams. */
export const aBaleMass: Field<number> = (text, units) =>
  within(readMass(text, units), [1000, 2_000_000], 'bale-mass-wanted');

/** What a jarful weighs, within bounds, in whole grams. */
export function aJarful(bounds: readonly [number, number]): Field<number> {
  return (text, units) => within(readSmallMass(text, units), bounds, 'jar-mass-wanted');
}

/** What a jar holds, within bounds, in whole millilitres. */
export function aJar(bounds: readonly [number, number]): Field<number> {
  return (text) => within(readVolumeMl(text, 'ml'), bounds, 'jar-size-wanted');
}

const anyRate = { kind: 'whole', value: 1, least: 1, most: 100_000, unit: 'g/m²' } as const;

/** A dressing, in whole grams a square metre. */
export const aRate: Field<number> = (text, units) => {
  const row = { ...anyRate, name: '', says: '', source: 'common-practice' } as const;
  const value = text === '' ? null : readTyped(row, text, units);
  return within(typeof value === 'number' ? value : null, [1, 100_000], 'rate-wanted');
};

/** A number above nothing. */
export const aNumber: Field<number> = (text) => {
  const value = /^\d{1,7}([.,]\d{1,4})?$/.test(text) ? Number(text.replace(',', '.')) : null;
  return within(value, [0.0001, noMost], 'number-wanted');
};

/** A whole number from one to a few thousand. */
export const aCount: Field<number> = (text) =>
  within(/^\d{1,4}$/.test(text) ? Number(text) : null, [1, 9999], 'number-wanted');

/** One of a list. */
export function aChoice<Key extends string>(keys: readonly Key[]): Field<Key> {
  return (text) => {
    const value = keys.find((key) => key === text);
    return value === undefined ? { fault: 'choice-wanted' } : { value };
  };
}

/** A field that may be left empty, and then is null. */
export function optional<Value>(field: Field<Value>): Field<Value | null> {
  return (text, units) => (text === '' ? { value: null } : field(text, units));
}
