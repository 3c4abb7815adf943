import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { setDensity } from '@/lib/usecases/deliveries/set-density';
import { keepMeasured } from '@/lib/usecases/measures/keep-measured';
import { readMeasures } from '@/lib/usecases/measures/read-measures';
import type { Caller } from '@/lib/usecases/operation';
import { NotFound } from '@/lib/usecases/refusal';
import { readRecipes } from '@/lib/usecases/recipes/read-recipes';
import {
  deliveryFacts,
  done,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

let society: TestSociety;
let secretary: Caller;
let member: TestMember;
let holdingId: string;

beforeAll(async () => {
  society = await makeSociety();
  secretary = society.secretary.caller;
  member = await makeMember(society);
  ({ holdingId } = await makePlot(society, 'A1', [member.id]));
});

const planned = async (given: Record<string, string> = {}) =>
  (await done(planDelivery.run(secretary, once(deliveryFacts(given))))).deliveryId;
/** Five buckets of 10 L at 4, 5, 6, 7 and 8 kg net. */
const buckets = {
  bucket: '10 L',
  empty: '600 g',
  fill1: '4.6',
  fill2: '5.6',
  fill4: '6.6',
  fill5: '7.6',
  fill7: '8.6',
};
const density = (deliveryId: string, given: Record<string, string> = {}) =>
  setDensity.run(secretary, once({ deliveryId, ...buckets, ...given }));

describe('a density from weighed buckets', () => {
  it('is set with the loads that it makes, and the book keeps how it was come by', async () => {
    const deliveryId = await planned({ amount: '12', amountUnit: 'tonnes' });
    const before = await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } });
    expect([before.densityGPerL, before.expectedLoads]).toEqual([400, 352]);
    expect(await done(density(deliveryId))).toEqual({ deliveryId, densityGPerL: 600, expectedLoads: 235 });
    const after = await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } });
    expect({ ...after, densityGPerL: 400, expectedLoads: 352 }).toEqual(before);
    expect([after.densityGPerL, after.expectedLoads]).toEqual([600, 235]);
    const [row] = await db().auditRow.findMany({ where: { thingId: deliveryId, verb: 'density set' } });
    expect([row?.before, row?.after]).toEqual([
      { densityGPerL: 400, expectedLoads: 352 },
      { densityGPerL: 600, expectedLoads: 235, leastGPerL: 400, mostGPerL: 800, bucketfuls: 5 },
    ]);
  });

  it('leaves the loads of what was ordered by the cubic metre or the load', async () => {
    const deliveryId = await planned({ amount: '10', amountUnit: 'm3' });
    expect((await done(density(deliveryId))).expectedLoads).toBe(117);
  });

  it('stays once loads are booked, and once booking is closed', async () => {
    const deliveryId = await planned();
    await done(openDelivery.run(secretary, once({ deliveryId })));
    await done(density(deliveryId));
    await done(bookLoads.run(member.caller, once({ deliveryId, holdingId, asked: '2', beds: [] })));
    expect(await refusedWith(density(deliveryId))).toEqual(['booked-already']);
    await done(closeDelivery.run(secretary, once({ deliveryId })));
    expect(await refusedWith(density(deliveryId))).toEqual(['step-not-now']);
  });

  it('is refused where the weights cannot be, or are far from all that is published', async () => {
    const deliveryId = await planned();
    expect(await refusedWith(density(deliveryId, { bucket: '0' }))).toEqual(['volume-wanted']);
    expect(await refusedWith(density(deliveryId, { empty: '9 kg' }))).toEqual(Array(5).fill('lighter-than-empty'));
    expect(await refusedWith(density(deliveryId, { bucket: '1 L' }))).toEqual(['density-out-of-range']);
    await expect(setDensity.run(member.caller, once({ deliveryId, ...buckets }))).rejects.toThrow(NotFound);
    expect((await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } })).densityGPerL).toBe(400);
  });

  it('is offered to the secretary alone, of what may still be changed', async () => {
    const deliveryId = await planned({ name: 'To be weighed' });
    const offered = async (caller: Caller) =>
      (await readMeasures.run(caller, { what: 'bucket', typed: buckets })).deliveries.map(({ id }) => id);
    expect(await offered(secretary)).toContain(deliveryId);
    expect(await offered(member.caller)).toEqual([]);
    const states = await db().delivery.findMany({ where: { id: { in: await offered(secretary) } } });
    expect(states.every(({ state }) => state === 'planned' || state === 'open')).toBe(true);
    await done(openDelivery.run(secretary, once({ deliveryId })));
    expect(await offered(secretary)).toContain(deliveryId);
    await done(bookLoads.run(member.caller, once({ deliveryId, holdingId, asked: '2', beds: [] })));
    expect(await offered(secretary)).not.toContain(deliveryId);
  });
});

describe('what was measured', () => {
  it('is kept as one’s own habit, and nothing beside it', async () => {
    expect((await readMeasures.run(member.caller, { what: 'heap', typed: null })).barrows).toEqual({
      society: 85,
      own: 85,
    });
    await done(keepMeasured.run(member.caller, once({ jarMl: '450', jarWeighedG: '260' })));
    await done(keepMeasured.run(member.caller, once({ barrowLitres: '110' })));
    const { habits } = await readRecipes.run(member.caller, {});
    expect([habits.jarMl.value, habits.jarWeighedG.value, habits.barrowLitres.value]).toEqual([450, 260, 110]);
    const { asked, barrows, jarMl } = await readMeasures.run(member.caller, {
      what: 'heap',
      typed: { shape: 'box', lengthCm: '1 m', widthCm: '1 m', heightCm: '1 m' },
    });
    expect([barrows, jarMl]).toEqual([{ society: 85, own: 110 }, 450]);
    expect(asked.answer).toMatchObject({ ok: true, value: { litres: 1000, loads: 11, ownLoads: 9 } });
    expect(await refusedWith(keepMeasured.run(member.caller, once({ barrowLitres: '19' })))).toEqual([
      'value-out-of-range',
    ]);
    expect(await refusedWith(keepMeasured.run(member.caller, once({})))).toEqual(['nothing-to-keep']);
    const book = await db().auditRow.findMany({ where: { thing: 'habits', thingId: member.id } });
    expect(book.map(({ after }) => after)).toEqual([
      { changed: ['habit.jarMl', 'habit.jarWeighedG'] },
      { changed: ['habit.barrowLitres'] },
    ]);
  });
});
