import 'server-only';
import { type BarrowLitres, calibrateBarrow } from '@/lib/domain/quantity/barrow-calibration';
import type { Units } from '@/lib/domain/quantity/length';
import type { Outcome } from '../refusal';
import { aNumber, aVolume, optional, readFields, type Typed, wrong } from './fields';

export type BarrowAnswer = {
  readonly bucketLitres: number;
  readonly struck: number;
  readonly heaped: number | null;
  readonly barrow: BarrowLitres;
};

/** What a barrow holds, from bucketfuls counted into it. */
export function askBarrow(typed: Typed, units: Units): Outcome<BarrowAnswer> {
  const read = readFields({ bucket: aVolume, struck: aNumber, heaped: optional(aNumber) }, typed, units);
  if (!read.ok) return read;
  const { bucket: bucketLitres, struck, heaped } = read.value;
  if (bucketLitres * struck < 0.5) return wrong('holds-nothing', 'struck');
  if (heaped !== null && heaped < struck) return wrong('heaped-below-struck', 'heaped');
  const barrow = calibrateBarrow(bucketLitres, struck, heaped);
  return { ok: true, value: { bucketLitres, struck, heaped, barrow } };
}
