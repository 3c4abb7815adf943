import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { recordLook } from '@/lib/usecases/deliveries/look-at-heap';
import { changeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { seasonServed } from '@/lib/usecases/ground/holding-need';
import { readOrder } from '@/lib/usecases/ordering/read-order';
import { startTest } from '@/lib/usecases/residue/keep-tests';
import { readTest } from '@/lib/usecases/residue/read-tests';
import { recordReading } from '@/lib/usecases/residue/record-reading';
import { addSupplierLoad, changeSupplierLoad, retireSupplierLoad } from '@/lib/usecases/suppliers/keep-supplier-loads';
import { addSupplier, changeSupplier, retireSupplier } from '@/lib/usecases/suppliers/keep-suppliers';
import { listSuppliers, readSupplier, readSupplierOffer } from '@/lib/usecases/suppliers/read-suppliers';
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

const today = todayIn('Europe/London');
const season = seasonServed(today);

let society: TestSociety;
let secretary: TestMember;
let holder: TestMember;
let supplierId: string;
let trailerId: string;

// Two plots of five rods without a record: 158.08 kg each, 5 loads of 34 kg; so 10 loads, 340 kg.
beforeAll(async () => {
  society = await makeSociety();
  secretary = society.secretary;
  holder = await makeMember(society);
  await makePlot(society, 'O1', [holder.id], false);
  await makePlot(society, 'O2', [(await makeMember(society)).id], false);
  const typed = { name: 'The stables', reach: '01632 960123', notes: 'Mornings.' };
  supplierId = (await done(addSupplier.run(secretary.caller, once(typed)))).supplierId;
  const trailer = { supplierId, materialKey: 'horse-manure', unit: 'trailer', trailerLitres: '300', price: '6' };
  trailerId = (await done(addSupplierLoad.run(secretary.caller, once(trailer)))).supplierLoadId;
});

async function order(asked: object = {}) {
  const answer = await readOrder.run(secretary.caller, asked);
  if (!('offers' in answer)) throw new Error('there is no site');
  return answer;
}

const plan = async (facts: Record<string, string>) =>
  (await done(planDelivery.run(secretary.caller, once(deliveryFacts(facts))))).deliveryId;

describe('what to order', () => {
  it('is what the ground needs, in whole loads as holdings book them, in the supplier’s trailers', async () => {
    const { need, wanted, offers, planned, heaps, outlook } = await order();
    expect([need, wanted]).toEqual([340_000, { leastG: 340_000, mostG: 340_000 }]);
    // A trailer of 300 L at 400 g a litre is 120 kg: three of them, 20 kg over, ten loads.
    expect(offers).toMatchObject([
      {
        ...{ supplier: 'The stables', unitG: 120_000, barrowLoadG: 34_000 },
        order: { leastUnits: 3, mostUnits: 3, overG: 20_000, loads: 10, priceMinor: 1800, loadMinor: 170 },
      },
    ]);
    expect([planned, heaps]).toEqual([[], []]);
    expect(outlook.map((one) => one.season)).toEqual([season, season + 1, season + 2, season + 3]);
    expect(outlook.every(({ needG }) => needG === 340_000)).toBe(true);
  });

  it('begins a delivery of so many of them with one press, and keeps whose they are', async () => {
    const offer = await readSupplierOffer.run(secretary.caller, { supplierLoadId: trailerId, units: '2' });
    expect(offer).toMatchObject({
      ...{ supplierId, supplier: 'The stables', materialKey: 'horse-manure', densityGPerL: 400, priceMinor: 1200 },
      amount: { thousandths: 600, unit: 'm3' },
    });
    const deliveryId = await plan({ amount: '0.6', amountUnit: 'm3', supplierId, thanks: 'two trays of eggs' });
    const row = await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } });
    expect(row).toMatchObject({ supplierId, supplier: 'The stables', thanks: 'two trays of eggs', expectedLoads: 7 });
    const { planned, wanted, onOrderG } = await order();
    expect(onOrderG).toBe(7 * 34_000);
    expect(wanted).toEqual({ leastG: 102_000, mostG: 102_000 });
    expect(planned).toMatchObject([{ id: deliveryId, massG: 238_000, short: { leastG: 102_000, mostG: 102_000 } }]);
    const text = once({ deliveryId, ...deliveryFacts({ supplierId, supplier: 'a yard', amount: '7' }) });
    await done(changeDelivery.run(secretary.caller, text));
    expect(await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } })).toMatchObject({ supplier: 'a yard' });
  });

  it('counts what lies on old heaps from least to most, by the newest look, and nothing for the years after', async () => {
    const deliveryId = await settled('cattle-manure', {
      heapLoads: 40,
      collectedLoads: 36,
      arrivesOn: addDays(today, -200),
    });
    const before = await order();
    // Four loads of 63.75 kg lay there; at least 1 is left, and at most all of them.
    expect(before.heaps).toMatchObject([
      {
        id: deliveryId,
        leastLoads: 1,
        mostLoads: 4,
        known: { loads: 4, by: 'count' },
        shrinks: { key: 'part-rotted-manure' },
      },
    ]);
    expect(before).toMatchObject({ leftLeastG: 63_750, leftMostG: 255_000 });
    expect(before.wanted).toEqual({ leastG: 0, mostG: 340_000 - 238_000 - 63_750 });
    expect(before.outlook.slice(1).every(({ leftMostG }) => leftMostG === 0)).toBe(true);
    expect(before.offers[0]?.order).toMatchObject({ leastUnits: 0, mostUnits: 1 });
    await done(recordLook.run(secretary.caller, once({ deliveryId, loads: '2' })));
    expect((await order()).heaps).toMatchObject([
      { leastLoads: 2, mostLoads: 2, known: { loads: 2, by: 'look', on: today } },
    ]);
    await done(recordLook.run(secretary.caller, once({ deliveryId, loads: '0' })));
    expect((await order()).heaps).toEqual([]);
  });

  it('shows a heap whose test shows symptoms, and counts it for nothing', async () => {
    const deliveryId = await settled('mixed-manure', {
      heapLoads: 9,
      collectedLoads: 0,
      arrivesOn: addDays(today, -3),
    });
    const { wanted } = await order();
    await findSymptoms(deliveryId);
    const doubted = await order();
    expect(doubted.heaps).toMatchObject([{ id: deliveryId, isDoubted: true }]);
    expect(doubted.leftMostG).toBe(0);
    expect(doubted.wanted.mostG).toBeGreaterThan(wanted.mostG);
    await done(recordLook.run(secretary.caller, once({ deliveryId, loads: '0' })));
  });

  it('tells of straw by the bale, from the recipes of what is planned', async () => {
    const bale = { supplierId, materialKey: 'straw', unit: 'bales', baleKg: '13', price: '3.50' };
    await done(addSupplierLoad.run(secretary.caller, once(bale)));
    const { isStraw, need, offers } = await order({ materialKey: 'straw' });
    expect([isStraw, need]).toEqual([true, 0]);
    expect(offers).toMatchObject([{ load: { of: { unit: 'bales', baleMassG: 13_000 } }, order: { mostUnits: 0 } }]);
  });
});

describe('a supplier', () => {
  it('tells what was ordered and measured, by material', async () => {
    await settled('horse-manure', {
      heapLoads: 90,
      collectedLoads: 90,
      arrivesOn: addDays(today, -90),
      expectedLoads: 100,
    });
    await settled('horse-manure', {
      heapLoads: 94,
      collectedLoads: 94,
      arrivesOn: addDays(today, -400),
      expectedLoads: 100,
    });
    const { deliveries, brings } = await readSupplier.run(secretary.caller, { supplierId });
    expect(brings.find(({ key }) => key === 'horse-manure')).toMatchObject({ deliveries: 2, differencePercent: -8 });
    expect(deliveries.find(({ heapLoads }) => heapLoads === 90)).toMatchObject({ priceMinor: 9000, loadMinor: 100 });
  });

  it('refuses a twin, a trailer of no size, a bale of no weight, bales of manure and a density nobody has met', async () => {
    const add = (typed: object) =>
      refusedWith(addSupplierLoad.run(secretary.caller, once({ supplierId, materialKey: 'horse-manure', ...typed })));
    expect(await refusedWith(addSupplier.run(secretary.caller, once({ name: 'the STABLES' })))).toEqual([
      'supplier-name-taken',
    ]);
    expect(await add({ unit: 'trailer' })).toEqual(['trailer-size-missing']);
    expect(await add({ unit: 'bales', baleKg: '13' })).toEqual(['bales-of-straw']);
    expect(await add({ unit: 'bales', materialKey: 'straw' })).toEqual(['bale-weight-missing']);
    expect(await add({ unit: 'm3', densityGPerL: '199' })).toEqual(['density-out-of-range']);
    expect(await add({ unit: 'm3', materialKey: 'gravel' })).toEqual(['material-unknown']);
  });

  it('is reached by what the secretary alone reads: no mail, no member’s page and no row of the book says it', async () => {
    const deliveryId = await plan({ supplierId, materialKey: 'sheep-manure', densityGPerL: '500' });
    await done(openDelivery.run(secretary.caller, once({ deliveryId })));
    const changed = { supplierId, name: 'The stables', reach: '01632 960999', notes: 'Evenings.' };
    await done(changeSupplier.run(secretary.caller, once(changed)));
    const [mail, book, kept] = await Promise.all([
      db().mailMessage.findMany({ where: { societyId: society.id } }),
      db().auditRow.findMany({ where: { societyId: society.id } }),
      db().writeOnce.findMany({ where: { societyId: society.id } }),
    ]);
    expect(book.some(({ thing, verb }) => thing === 'supplier' && verb === 'changed')).toBe(true);
    const seen = await readDelivery.run(holder.caller, { deliveryId });
    expect(JSON.stringify([mail, book, kept, seen])).not.toMatch(/01632|Mornings|Evenings/);
  });

  it('is not there for anybody else, nor for another society', async () => {
    await expect(readSupplier.run(holder.caller, { supplierId })).rejects.toThrow();
    const other = await makeSociety();
    await expect(readSupplier.run(other.secretary.caller, { supplierId })).rejects.toThrow();
    const foreign = once(deliveryFacts({ supplierId }));
    await makePlot(other, 'X1', [], false);
    await expect(planDelivery.run(other.secretary.caller, foreign)).rejects.toThrow();
  });

  it('is retired with what it brings, and nothing is planned from it any more', async () => {
    const load = { supplierLoadId: trailerId, materialKey: 'horse-manure', unit: 'tonnes', thanks: 'a pot of honey' };
    await done(changeSupplierLoad.run(secretary.caller, once(load)));
    const [one] = (await readSupplier.run(secretary.caller, { supplierId })).supplier.loads;
    expect(one).toMatchObject({ of: { unit: 'tonnes' }, priceMinor: null, thanks: 'a pot of honey' });
    await done(retireSupplierLoad.run(secretary.caller, once({ supplierLoadId: trailerId, sure: 'yes' })));
    await expect(changeSupplierLoad.run(secretary.caller, once(load))).rejects.toThrow();
    await done(retireSupplier.run(secretary.caller, once({ supplierId, sure: 'yes' })));
    expect(await listSuppliers.run(secretary.caller, {})).toEqual([]);
    await expect(planDelivery.run(secretary.caller, once(deliveryFacts({ supplierId })))).rejects.toThrow();
    expect((await order({ materialKey: 'straw' })).offers).toEqual([]);
    expect(await db().supplier.count({ where: { id: supplierId } })).toBe(1);
  });
});

// As the table keeps one that was settled: nothing is asked of the queue here.
async function settled(
  materialKey: string,
  given: { heapLoads: number; collectedLoads: number; arrivesOn: string; expectedLoads?: number },
): Promise<string> {
  const { arrivesOn, expectedLoads = given.heapLoads, heapLoads, collectedLoads } = given;
  const day = new Date(arrivesOn);
  const { id } = await db().delivery.create({
    data: {
      ...{
        societyId: society.id,
        siteId: society.siteId,
        name: `Settled ${materialKey}`,
        state: 'settled',
        materialKey,
      },
      ...{ amountThousandths: expectedLoads * 1000, amountUnit: 'loads', expectedLoads, rateGPerM2: 5000 },
      ...{ densityGPerL: materialKey === 'cattle-manure' ? 750 : 400, barrowLitres: 85, priceMinor: 9000 },
      ...{ arrivesOn: day, collectByOn: day, closesAt: day, supplierId, heapLoads, collectedLoads },
      ...{ sharedLoads: collectedLoads, settledAt: day },
    },
  });
  return id;
}

async function findSymptoms(deliveryId: string): Promise<void> {
  const of = { deliveryId, name: 'The doubted heap', sownOn: addDays(today, -20) };
  const counts = { manureParts: '1', mixParts: '1', testPots: '3', controlPots: '3', seedsAPot: '3' };
  const { testId } = await done(startTest.run(holder.caller, once({ ...of, ...counts })));
  const { test } = await readTest.run(holder.caller, { testId });
  const pots = test.record.pots.map(({ id, kind }) => ({
    ...{ potId: id, up: '3', trueLeaves: '2' },
    distorted: kind === 'test' ? '2' : '0',
  }));
  await done(recordReading.run(holder.caller, once({ testId, on: addDays(today, -2), pots })));
}
