import { beforeAll, describe, expect, it } from 'vitest';
import { db, inTransaction } from '@/lib/data/db';
import { appendSharing } from '@/lib/data/result-sharing';
import { openScopeOfMember } from '@/lib/data/scope';
import { todayIn } from '@/lib/platform/clock';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { tickOff } from '@/lib/usecases/deliveries/collect';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { logHarvest } from '@/lib/usecases/harvest/keep-harvests';
import { NotFound } from '@/lib/usecases/refusal';
import { readLandlordReview, readReview } from '@/lib/usecases/review/read-review';
import { changeSetting } from '@/lib/usecases/settings/settings';
import { readRotation } from '@/lib/usecases/site/read-rotation';
import { deliveryFacts, done, makeBed, makeMember, makePlot, makeSociety, once } from '../fixtures/society';
import type { TestMember, TestSociety } from '../fixtures/society';

const today = todayIn('Europe/London');
/** Over, so that every day of it can have been. */
const season = Number(today.slice(0, 4)) - 1;

type Holder = { member: TestMember; plotId: string; frameId: string; holdingId: string; bedIds: string[] };
let society: TestSociety;
let holders: Holder[];

const read = (change: object = {}) => readReview.run(society.secretary.caller, { season, ...change });
const readForLandlord = () => readLandlordReview.run(society.secretary.caller, { season });

async function agree({ member, holdingId }: Holder, shares = true): Promise<void> {
  const scope = await openScopeOfMember(db(), member.id);
  await inTransaction((tx) => appendSharing(tx, scope, { holdingId, shares, at: new Date() }));
}

async function harvest({ member, bedIds }: Holder, bed: number, cropKey: string, amount: string): Promise<void> {
  const { caller } = member;
  const planting = { bedId: bedIds[bed] ?? '', cropKey, season: String(season) };
  const { plantingId } = await done(recordPlanting.run(caller, once(planting)));
  const onDay = `${season}-09-10`;
  const picked = { plantingId, measure: 'grams', amount, onDay, quality: 'good', cleared: 'on' };
  await done(logHarvest.run(caller, once({ ...picked, notes: 'Secretly watered' })));
}

async function heapOf(loads: number, asked: readonly number[]): Promise<void> {
  const { caller } = society.secretary;
  const facts = deliveryFacts({ name: 'Load from Quarrelsome Farm', materialKey: 'horse-manure', densityGPerL: '400' });
  const { deliveryId } = await done(planDelivery.run(caller, once(facts)));
  await done(openDelivery.run(caller, once({ deliveryId })));
  for (const [nth, wanted] of asked.entries()) {
    const { member, holdingId } = holders[nth] as Holder;
    if (wanted)
      await done(bookLoads.run(member.caller, once({ deliveryId, holdingId, asked: String(wanted), beds: [] })));
  }
  await done(closeDelivery.run(caller, once({ deliveryId })));
  await done(measureHeap.run(caller, once({ deliveryId, loads: String(loads) })));
  await done(confirmShareOut.run(caller, once({ deliveryId })));
  for (const { id: bookingId, share } of await db().booking.findMany({ where: { deliveryId, share: { gt: 0 } } }))
    await done(tickOff.run(caller, once({ deliveryId, bookingId, loads: String(share) })));
  await db().delivery.update({ where: { id: deliveryId }, data: { arrivesOn: new Date(`${season}-03-10`) } });
}

beforeAll(async () => {
  society = await makeSociety();
  holders = [];
  for (const nth of [1, 2, 3, 4, 5]) {
    const member = await makeMember(society, { name: `Persephone ${nth}`, email: null });
    const plot = await makePlot(society, `Quince${nth}`, [member.id]);
    const bedIds = [(await makeBed(society, plot)).id, (await makeBed(society, plot, 1)).id];
    holders.push({ member, ...plot, bedIds });
  }
  const [one, two, three, four, five] = holders as [Holder, Holder, Holder, Holder, Holder];
  // Beds of 12 m²: 2, 2½ and 3 kg on each square metre; the fourth agreed and grew none, the fifth did not agree.
  for (const [holder, amount] of [
    [one, '24 kg'],
    [two, '30 kg'],
    [three, '36 kg'],
    [five, '120 kg'],
  ] as const)
    await harvest(holder, 0, 'onion', amount);
  for (const holder of [one, two]) await harvest(holder, 1, 'leek', '12 kg');
  for (const holder of [one, two, three, four]) await agree(holder);
  const found = {
    societyId: society.id,
    frameId: one.frameId,
    holdingId: one.holdingId,
    certainty: 'sure',
    notedByMemberId: one.member.id,
  };
  const place = { xCm: 60, yCm: 60, widthCm: 200, lengthCm: 100 };
  await db().trouble.create({
    data: { ...found, ...place, troubleKey: 'white-rot', foundOn: new Date(`${season}-07-01`), notes: 'By the elder' },
  });
  await heapOf(9, [4, 4, 4, 0, 0]);
});

describe('the season review', () => {
  it('says of the rotation what the report says', async () => {
    const { ground } = await read();
    const report = await readRotation.run(society.secretary.caller, { season: String(season) });
    if (!report.site) return expect.fail('there is a site');
    expect(ground).toMatchObject({ sites: 1, plots: 5, total: report.total, byGroup: report.byGroup });
    expect(ground.trend.map(({ year }) => year)).toEqual([7, 6, 5, 4, 3, 2, 1, 0].map((back) => season - back));
    expect(ground.trend.at(-1)?.total).toEqual(report.total);
  });

  it('adds up deliveries, and how loads spread over holdings', async () => {
    const { parts } = await read();
    expect(parts).toHaveLength(1);
    expect(parts[0]?.total).toMatchObject({ asked: 12, collected: 9, heapLoads: 9 });
    // Three each, and two holdings with ground that asked for none.
    expect(parts[0]?.bands).toEqual([
      { fromLoads: 0, toLoads: 0, holdings: 2 },
      { fromLoads: 1, toLoads: 2, holdings: 0 },
      { fromLoads: 3, toLoads: 5, holdings: 3 },
    ]);
    const told = await readForLandlord();
    expect(told.parts[0]?.bands).toEqual([{ fromLoads: 0, toLoads: 5, holdings: 5 }]);
  });

  it('counts troubles by kind', async () => {
    const { ground } = await read();
    expect(ground.troubles).toMatchObject([{ troubleKey: 'white-rot', found: 1, waitingCm2: 20_000 }]);
  });

  it('tells a yield of those who agreed, from three holdings on', async () => {
    const { harvest: grew } = await read();
    expect(grew.agreed).toBe(4);
    expect(grew.told).toMatchObject([{ cropKey: 'onion', holdings: 3, gPerM2: { estimate: 2500 } }]);
    // Student's t of 2 degrees, 95 %: 4.30265 × 500 ÷ √3.
    expect(grew.told[0]?.gPerM2.high).toBeCloseTo(2500 + (4.30265 * 500) / Math.sqrt(3), 1);
    expect(grew.withheld).toEqual(['Leek']);
    const [, , third] = holders;
    await agree(third as Holder, false);
    expect((await read()).harvest).toMatchObject({ agreed: 3, told: [], withheld: ['Leek', 'Onion'] });
    await agree(third as Holder);
    expect((await read()).harvest.told).toHaveLength(1);
  });

  it('names holdings to those who may read the season’s paper, by plots or with names', async () => {
    const { caller } = society.secretary;
    const [{ member }] = holders as [Holder];
    expect((await readReview.run(member.caller, { season })).parts[0]?.holdings).toBeNull();
    const rule = (key: string, value: string) => done(changeSetting.run(caller, once({ key, value, from: today })));
    await rule('seasonPaperFor', 'members');
    const [part] = (await readReview.run(member.caller, { season })).parts;
    expect(part?.holdings?.map(({ plots, names, collected }) => [plots, names, collected])).toEqual(
      [1, 2, 3].map((nth) => [[`Quince${nth}`], [], 3]),
    );
    await rule('seasonPaperNames', 'names');
    const [named] = (await readReview.run(member.caller, { season })).parts;
    expect(named?.holdings?.[0]?.names).toEqual(['Persephone 1']);
  });

  it('tells the landlord nothing that points to anybody', async () => {
    const answer = JSON.stringify(await readForLandlord());
    expect(answer).toContain('Rotted horse manure');
    for (const secret of ['Persephone', 'Quince', 'Quarrelsome', 'watered', 'elder'])
      expect(answer).not.toContain(secret);
    for (const { plotId, frameId, holdingId, member, bedIds } of holders)
      for (const id of [plotId, frameId, holdingId, member.id, ...bedIds]) expect(answer).not.toContain(id);
    const [{ member }] = holders as [Holder];
    await expect(readLandlordReview.run(member.caller, { season })).rejects.toThrow(NotFound);
  });

  it('is of the last season that is whole, unless one is asked for', async () => {
    const { season: shown, seasons } = await readReview.run(society.secretary.caller, {});
    expect(shown).toBe(today.slice(5) > '08-31' ? season + 1 : season);
    expect(seasons[0]).toBe(season + 1);
    expect((await read({ season: season + 9 })).season).toBe(shown);
    expect((await read({ season: 'x' })).season).toBe(shown);
  });
});
