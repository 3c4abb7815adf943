import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import {
  callOffDelivery,
  changeDelivery,
  closeDelivery,
  openDelivery,
  planDelivery,
  postponeDelivery,
} from '@/lib/usecases/deliveries/plan-delivery';
import { listDeliveries, readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { setDensity } from '@/lib/usecases/deliveries/set-density';
import { measureHeap } from '@/lib/usecases/deliveries/share-out';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { seasonServed } from '@/lib/usecases/ground/holding-need';
import { calendarDate } from '@/lib/domain/calendar/calendar-date';
import {
  deliveryFacts,
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

const straw = {
  name: 'Straw',
  materialKey: 'straw',
  amount: '40',
  amountUnit: 'bales',
  densityGPerL: '70',
  bale: 'small',
};
let society: TestSociety;
let holder: TestMember;
let holdingId: string;

const plan = async (facts: Record<string, string> = {}) =>
  (await done(planDelivery.run(society.secretary.caller, once(deliveryFacts(facts))))).deliveryId;
const rowOf = (id: string) => db().delivery.findUniqueOrThrow({ where: { id } });
const lorry = async () => {
  const first = await plan();
  return [first, await plan({ ...straw, withId: first })] as const;
};
const mails = () => db().mailMessage.count({ where: { societyId: society.id } });

beforeAll(async () => {
  society = await makeSociety();
  holder = await makeMember(society, { name: 'Ivy' });
  const plot = await makePlot(society, '1', [holder.id]);
  holdingId = plot.holdingId;
  const { arrivesOn } = deliveryFacts();
  const season = String(seasonServed(calendarDate(arrivesOn)));
  for (const nth of [0, 1, 2]) {
    const { id: bedId } = await makeBed(society, plot, nth);
    await done(recordPlanting.run(holder.caller, once({ bedId, cropKey: 'onion', season })));
  }
});

describe('straw by the bale', () => {
  it('is a load of its own weight, given whole and of straw', async () => {
    const refused = (facts: Record<string, string>) =>
      refusedWith(planDelivery.run(society.secretary.caller, once(deliveryFacts({ ...straw, ...facts }))));
    expect(await refused({ materialKey: 'horse-manure' })).toEqual(['bales-of-straw']);
    expect(await refused({ amount: '2.5' })).toEqual(['whole-bales']);
    expect(await refused({ bale: '' })).toEqual(['bale-weighs']);
    expect(await refused({ bale: 'no such' })).toEqual(['input']);
    const id = await plan({ ...straw, baleKg: '14', thanks: 'a morning in the yard' });
    expect(await rowOf(id)).toMatchObject({
      ...{ loadUnit: 'bale', baleMassG: 14_000, expectedLoads: 40, amountUnit: 'bales', densityGPerL: 70 },
      thanks: 'a morning in the yard',
    });
    const typed = { deliveryId: id, bucket: '10 L', empty: '1 kg', fill1: '2 kg', fill2: '2 kg', fill3: '2 kg' };
    expect(await refusedWith(setDensity.run(society.secretary.caller, once(typed)))).toEqual(['comes-in-bales']);
    expect((await rowOf(id)).expectedLoads).toBe(40);
  });

  it('has a need by the recipes, rounded up once over the holding, and explained', async () => {
    const [, strawId] = await lorry();
    await done(openDelivery.run(society.secretary.caller, once({ deliveryId: strawId })));
    const { claims } = await readDelivery.run(holder.caller, { deliveryId: strawId });
    // Three beds of 12 m² of onions at 500 g/m² want 18 kg: two bales of 13 kg, not three.
    expect(claims[0]?.need).toMatchObject({ serves: 'straw', loadUnit: 'bale', barrowLoadG: 13_000, loads: 2 });
    expect(claims[0]?.need?.lines[0]).toMatchObject({
      massG: 6000,
      straw: [{ cropGroup: 'alliums', areaCm2: 120_000, strewnCm2: 0, rateGPerM2: 500 }],
    });
    const booking = await done(
      bookLoads.run(holder.caller, once({ deliveryId: strawId, holdingId, asked: '3', beds: [] })),
    );
    expect(await db().booking.findUniqueOrThrow({ where: { id: booking.bookingId } })).toMatchObject({ needLoads: 2 });
    const barrows = await plan({ ...straw, amount: '4', amountUnit: 'm3' });
    await done(openDelivery.run(society.secretary.caller, once({ deliveryId: barrows })));
    const byBarrow = (await readDelivery.run(holder.caller, { deliveryId: barrows })).claims[0]?.need;
    // 85 L at 70 g/L is 5.95 kg.
    expect(byBarrow).toMatchObject({ loadUnit: 'barrow', barrowLoadG: 5950, loads: 4 });
  });
});

describe('what comes on one lorry', () => {
  it('is opened, put off, closed and called off together, with one mail each time', async () => {
    const { caller } = society.secretary;
    const ids = await lorry();
    const states = async () => (await Promise.all(ids.map(rowOf))).map(({ state }) => state);
    const before = await mails();
    const step = { deliveryId: ids[1] };
    await done(openDelivery.run(caller, once(step)));
    expect(await states()).toEqual(['open', 'open']);
    expect((await mails()) - before).toBe(2);
    const { arrivesOn, collectByOn, closesAt } = deliveryFacts();
    const later = { arrivesOn: collectByOn, collectByOn, closesAt };
    await done(postponeDelivery.run(caller, once({ ...step, ...later })));
    expect(new Set((await Promise.all(ids.map(rowOf))).map((row) => row.arrivesOn.toISOString().slice(0, 10)))).toEqual(
      new Set([collectByOn]),
    );
    expect((await mails()) - before).toBe(4);
    expect(await refusedWith(changeDelivery.run(caller, once({ deliveryId: ids[0], ...deliveryFacts() })))).toEqual([
      'comes-another-day',
    ]);
    expect(arrivesOn).not.toBe(collectByOn);
    await done(closeDelivery.run(caller, once(step)));
    expect(await states()).toEqual(['closed', 'closed']);
    await done(callOffDelivery.run(caller, once({ ...step, sure: 'yes' as const, together: 'yes' })));
    expect(await states()).toEqual(['called_off', 'called_off']);
    expect((await mails()) - before).toBe(6);
  });

  it('is called off alone where only one is meant, and all or none where one of them is too far', async () => {
    const { caller } = society.secretary;
    const [manure, bales] = await lorry();
    await done(openDelivery.run(caller, once({ deliveryId: manure })));
    await done(closeDelivery.run(caller, once({ deliveryId: manure })));
    await done(measureHeap.run(caller, once({ deliveryId: bales, loads: '38' })));
    await db().delivery.update({ where: { id: bales }, data: { state: 'collecting' } });
    const off = { deliveryId: manure, sure: 'yes' as const };
    expect(await refusedWith(callOffDelivery.run(caller, once({ ...off, together: 'yes' })))).toEqual([
      'together-not-now',
    ]);
    expect((await rowOf(manure)).state).toBe('closed');
    await done(callOffDelivery.run(caller, once(off)));
    expect([(await rowOf(manure)).state, (await rowOf(bales)).state]).toEqual(['called_off', 'collecting']);
  });

  it('comes on one day, and is shown with the other to those who may see it', async () => {
    const { caller } = society.secretary;
    const first = await plan();
    const otherDay = { ...straw, withId: first, arrivesOn: deliveryFacts().collectByOn };
    expect(await refusedWith(planDelivery.run(caller, once(deliveryFacts(otherDay))))).toEqual(['comes-another-day']);
    await done(openDelivery.run(caller, once({ deliveryId: first })));
    const second = await plan({ ...straw, withId: first });
    const seen = async () =>
      (await readDelivery.run(holder.caller, { deliveryId: first })).also.map((one) => one.delivery.id);
    expect(await seen()).toEqual([]);
    await done(openDelivery.run(caller, once({ deliveryId: second })));
    expect(await seen()).toEqual([second]);
    const { deliveries } = await listDeliveries.run(holder.caller, {});
    expect(deliveries.find(({ id }) => id === first)?.comesWith).toEqual(['Straw']);
  });

  it('takes steps from both ends at once without a deadlock: one opens them all, the other is told', async () => {
    const { caller } = society.secretary;
    for (let round = 0; round < 5; round += 1) {
      const ids = await lorry();
      const outcomes = await Promise.all(
        [...ids, ...ids].map((deliveryId) => openDelivery.run(caller, once({ deliveryId }))),
      );
      expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    }
  });
});
