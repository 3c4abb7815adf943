import 'server-only';
import { type BucketDensity, type BucketTest, densityOfBucketfuls } from '@/lib/domain/quantity/bucket-test';
import type { Units } from '@/lib/domain/quantity/length';
import type { Outcome } from '../refusal';
import { aMass, aMassOfSomething, aVolume, optional, readFields, type Typed, wrong } from './fields';

/** The fields of the fills: ten make a density sound. */
export const fillNames = Array.from({ length: 10 }, (_, at) => `fill${at + 1}`);

export type BucketAnswer = { readonly test: BucketTest; readonly density: BucketDensity };

/** What a litre of a heap weighs, from weighed bucketfuls. An empty field is a fill that was not made. */
export function askBucket(typed: Typed, units: Units): Outcome<BucketAnswer> {
  const bucket = readFields({ bucket: aVolume, empty: optional(aMass) }, typed, units);
  const made = fillNames.filter((name) => (typed[name] ?? '').trim() !== '');
  const fills = readFields(Object.fromEntries(made.map((name) => [name, aMassOfSomething])), typed, units);
  if (!bucket.ok || !fills.ok)
    return { ok: false, refusals: [bucket, fills].flatMap((one) => (one.ok ? [] : one.refusals)) };
  const emptyG = bucket.value.empty ?? 0;
  const light = made.filter((name) => (fills.value[name] ?? 0) <= emptyG);
  if (light.length) return wrong('lighter-than-empty', ...light);
  const test = { bucketLitres: bucket.value.bucket, emptyG, fullG: made.map((name) => fills.value[name] ?? 0) };
  if (made.length === 0) return wrong('no-bucketful', 'fill1');
  const meanG = test.fullG.reduce((sum, fullG) => sum + fullG - emptyG, 0) / made.length;
  if (meanG / test.bucketLitres < 0.5) return wrong('weighs-nothing', 'fill1');
  return { ok: true, value: { test, density: densityOfBucketfuls(test) } };
}
