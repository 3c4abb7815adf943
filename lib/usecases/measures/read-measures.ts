import 'server-only';
import { z } from 'zod';
import { bookingTotals } from '@/lib/data/booking';
import { deliveriesOf } from '@/lib/data/delivery';
import { mayTake } from '@/lib/domain/delivery/steps';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import type { Units } from '@/lib/domain/quantity/length';
import { habitsOf } from '@/lib/domain/recipe/habits-of';
import { query, type ReadContext } from '../operation';
import { keptFor } from '../recipes/recipes-for';
import type { Outcome } from '../refusal';
import { askBales, type BalesAnswer } from './ask-bales';
import { askBarrow, type BarrowAnswer } from './ask-barrow';
import { askBucket, type BucketAnswer } from './ask-bucket';
import { askHeap, type Barrows, type HeapAnswer } from './ask-heap';
import { askJar, type JarAnswer } from './ask-jar';
import { askUnits, type UnitsAnswer } from './ask-units';
import type { Typed } from './fields';

export const measures = ['heap', 'bales', 'bucket', 'barrow', 'jar', 'units'] as const;
export type Measure = (typeof measures)[number];

/** What was asked, and its answer or what is wrong with the asking; null while nothing was asked. */
export type Asked =
  | { readonly what: 'heap'; readonly answer: Outcome<HeapAnswer> | null }
  | { readonly what: 'bales'; readonly answer: Outcome<BalesAnswer> | null }
  | { readonly what: 'bucket'; readonly answer: Outcome<BucketAnswer> | null }
  | { readonly what: 'barrow'; readonly answer: Outcome<BarrowAnswer> | null }
  | { readonly what: 'jar'; readonly answer: Outcome<JarAnswer> | null }
  | { readonly what: 'units'; readonly answer: Outcome<UnitsAnswer> | null };

/** Conversions at hand, in the member's own units, and by their own barrow and jar beside the society's. */
export const readMeasures = query({
  name: 'read-measures',
  allow: canEnter,
  input: z.object({ what: z.enum(measures), typed: z.record(z.string(), z.string()).nullable() }),
  read: async (context, { what, typed }) => {
    const { db, scope, today } = context;
    const kept = await keptFor(db, scope, scope.memberId, today);
    const habits = habitsOf(kept);
    const { barrowLitres } = habitsOf({ ...kept, member: {} });
    const barrows = { society: barrowLitres.value, own: habits.barrowLitres.value };
    return {
      units: scope.units,
      barrows,
      jarMl: habits.jarMl.value,
      asked: answerTo(what, typed, scope.units, barrows),
      deliveries: what === 'bucket' ? await deliveriesToWeigh(context) : [],
    };
  },
});

function answerTo(what: Measure, typed: Typed | null, units: Units, barrows: Barrows): Asked {
  if (typed === null) return { what, answer: null };
  if (what === 'heap') return { what, answer: askHeap(typed, units, barrows) };
  if (what === 'bales') return { what, answer: askBales(typed, units) };
  if (what === 'bucket') return { what, answer: askBucket(typed, units) };
  if (what === 'barrow') return { what, answer: askBarrow(typed, units) };
  return what === 'jar' ? { what, answer: askJar(typed, units) } : { what, answer: askUnits(typed, units) };
}

/** The deliveries whose density the viewer may still set: nothing is booked by it yet. */
async function deliveriesToWeigh({ db, scope, now }: ReadContext) {
  if (!canRunSociety(scope)) return [];
  const open = (await deliveriesOf(db, scope, now)).filter(
    ({ state, loadUnit }) => loadUnit === 'barrow' && mayTake('change', state),
  );
  const totals = await Promise.all(open.map(({ id }) => bookingTotals(db, scope, id)));
  return open
    .filter((_, at) => totals[at]?.claims === 0)
    .map(({ id, name, densityGPerL }) => ({ id, name, densityGPerL }));
}
