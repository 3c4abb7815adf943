import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { holdingsOfMember } from '@/lib/data/holding';
import { openScopeOfMember } from '@/lib/data/scope';
import { todayIn } from '@/lib/platform/clock';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { NotFound } from '@/lib/usecases/refusal';
import { changeSowing } from '@/lib/usecases/seed/change-sowing';
import { datesOfSeed, dueOfSeed } from '@/lib/usecases/seed/due-seed';
import { addSeedItem } from '@/lib/usecases/seed/keep-items';
import { addPacket, changePacket, finishPacket, takeBackPacket, usePacket } from '@/lib/usecases/seed/keep-packets';
import { markSeedOrdered, noteSeedArrived } from '@/lib/usecases/seed/order-packs';
import { closeSeedOrder, openSeedOrder, planSeedOrder } from '@/lib/usecases/seed/plan-order';
import { readSeedOrder } from '@/lib/usecases/seed/read-orders';
import { readSeed, readTin } from '@/lib/usecases/seed/read-seed';
import { settleSeedOrder } from '@/lib/usecases/seed/settle-order';
import { wantSeed } from '@/lib/usecases/seed/want-seed';
import {
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
} from '../fixtures/society';

const season = Number(todayIn('Europe/London').slice(0, 4)) + 1;

let society: Awaited<ReturnType<typeof makeSociety>>;
let holder: TestMember;
let coHolder: TestMember;
let holdingId: string;

beforeAll(async () => {
  society = await makeSociety();
  [holder, coHolder] = [await makeMember(society), await makeMember(society)];
  const plot = await makePlot(society, 'T', [holder.id, coHolder.id]);
  ({ holdingId } = plot);
  const beds = [await makeBed(society, plot, 0), await makeBed(society, plot, 1), await makeBed(society, plot, 2)];
  for (const [at, cropKey] of ['leek', 'garlic', 'oca'].entries())
    await done(recordPlanting.run(holder.caller, once({ bedId: beds[at]?.id ?? '', cropKey, season: String(season) })));
});

const read = async (member = holder) => readSeed.run(member.caller, { season });
const leeks = async () => (await read()).lines.find(({ cropKey }) => cropKey === 'leek');
const add = async (facts: object) =>
  done(addPacket.run(holder.caller, once({ holdingId, cropKey: 'leek', unit: 'seeds', ...facts })));

describe('what a plan needs', () => {
  it('is worked out bed by bed, from seed or from sets', async () => {
    const { plantings, lines, sets } = await read();
    const leek = plantings.find(({ cropKey }) => cropKey === 'leek');
    expect(leek?.need).toMatchObject({ from: 'seed', germinationPercent: 65, marginPercent: 25 });
    const { plants = 0, seeds = 0 } = leek?.need?.from === 'seed' ? leek.need : {};
    expect(seeds).toBe(Math.ceil((plants * 125) / 65));
    expect(lines).toMatchObject([{ cropKey: 'leek', needed: seeds, inHand: 0, toOrder: seeds }]);
    expect(sets.map(({ cropKey }) => cropKey)).toContain('garlic');
  });

  it('is the member’s own where they say so, and theirs alone', async () => {
    const before = await leeks();
    const own = { cropKey: 'leek', rows: '50', inRow: '20', germinationPercent: '100', marginPercent: '0' };
    await done(changeSowing.run(holder.caller, once(own)));
    // A bed of 6 × 2 m, rows along the longer side: 4 rows of 30.
    expect(await leeks()).toMatchObject({ needed: 120 });
    expect((await read(coHolder)).lines[0]).toMatchObject({ needed: before?.needed });
    expect(await refusedWith(changeSowing.run(holder.caller, once({ cropKey: 'leek', rows: '50' })))).toEqual([
      'both-distances',
    ]);
    await done(changeSowing.run(holder.caller, once({ cropKey: 'leek' })));
    expect(await leeks()).toEqual(before);
    await done(changeSowing.run(holder.caller, once(own)));
  });

  it('is nothing for what is in the ground', async () => {
    const planting = await db().planting.findFirstOrThrow({ where: { societyId: society.id, cropKey: 'garlic' } });
    await db().planting.update({ where: { id: planting.id }, data: { plantedOn: new Date('2020-10-20') } });
    const { plantings, sets } = await read();
    expect(plantings.find(({ cropKey }) => cropKey === 'garlic')?.isInGround).toBe(true);
    expect(sets.map(({ cropKey }) => cropKey)).not.toContain('garlic');
  });
});

describe('the tin', () => {
  it('spares what is sound, and nothing that is past or of no year, unless it was tested', async () => {
    await add({ amount: '30', packedYear: String(season - 1) });
    await add({ amount: '500', packedYear: String(season - 9) });
    await add({ amount: '500' });
    expect(await leeks()).toMatchObject({ needed: 120, inHand: 30, toOrder: 90 });
    const { packetId } = await add({ amount: '40', packedYear: String(season - 9), germinationPercent: '13' });
    // 13 of 65 reckoned: a fifth of them count.
    expect(await leeks()).toMatchObject({ inHand: 38, toOrder: 82 });
    const { packets } = await readTin.run(holder.caller, { holdingId: null });
    expect(packets.map(({ state }) => state.code)).toEqual(['sound', 'past', 'year-unknown', 'tested']);
    await done(takeBackPacket.run(holder.caller, once({ packetId })));
    expect(await leeks()).toMatchObject({ inHand: 30 });
  });

  it('takes grams as seeds, with what other accounts make of them', async () => {
    const { packetId, seeds, fewest, most } = await add({ cropKey: 'parsnip', amount: '1', unit: 'milligrams' });
    expect({ seeds, fewest, most }).toEqual({ seeds: 423, fewest: 250, most: 423 });
    await done(takeBackPacket.run(holder.caller, once({ packetId })));
    const garlic = once({ holdingId, cropKey: 'garlic', unit: 'seeds', amount: '5' });
    expect(await refusedWith(addPacket.run(holder.caller, garlic))).toEqual(['seed-is-planted']);
  });

  it('is used, used up and corrected by either holder, each sending once', async () => {
    const { packetId } = await add({ cropKey: 'kale', amount: '100', packedYear: String(season - 1) });
    const some = once({ packetId, seeds: '60' });
    expect(await done(usePacket.run(coHolder.caller, some))).toEqual({ left: 40 });
    expect(await done(usePacket.run(coHolder.caller, some))).toEqual({ left: 40 });
    expect(await refusedWith(usePacket.run(holder.caller, once({ packetId, seeds: '41' })))).toEqual([
      'packet-holds-less',
    ]);
    const both = [holder, coHolder].map(({ caller }) => usePacket.run(caller, once({ packetId, seeds: '30' })));
    expect((await Promise.all(both)).filter(({ ok }) => ok)).toHaveLength(1);
    await done(finishPacket.run(holder.caller, once({ packetId })));
    const kale = async () => {
      const { packets, usedUp } = await readTin.run(holder.caller, { holdingId: null });
      const at = (list: readonly { cropKey: string; seeds: number }[]) =>
        list.filter(({ cropKey }) => cropKey === 'kale').map(({ seeds }) => seeds);
      return [at(packets), at(usedUp)];
    };
    expect(await kale()).toEqual([[], [0]]);
    await done(changePacket.run(holder.caller, once({ packetId, seeds: '15' })));
    expect(await kale()).toEqual([[15], []]);
  });

  it('is shut to the secretary, and the book says neither what is in it nor how much', async () => {
    const { id: packetId } = await db().seedPacket.findFirstOrThrow({ where: { holdingId } });
    await expect(finishPacket.run(society.secretary.caller, once({ packetId }))).rejects.toThrow(NotFound);
    const rows = await db().auditRow.findMany({ where: { societyId: society.id, thing: 'seed packet' } });
    expect(rows.length).toBeGreaterThan(5);
    expect(rows.filter(({ before, after }) => before !== null || after !== null)).toEqual([]);
  });
});

describe('an order beside the plan', () => {
  let orderId: string;
  let itemId: string;

  const contextOf = async (member: TestMember) => {
    const scope = await openScopeOfMember(db(), member.id);
    const today = todayIn('Europe/London');
    return {
      context: { db: db(), scope, today, now: new Date() },
      holdings: await holdingsOfMember(db(), scope, member.id, today),
    };
  };
  const due = async (member: TestMember) => {
    const { context, holdings } = await contextOf(member);
    return (await dueOfSeed(context, holdings)).map((one) => (one.code === 'run-seed' ? one.step : one.code));
  };

  it('offers the list as it stands, and says what of it is not ordered', async () => {
    const closesAt = new Date(Date.now() + 3 * 86_400_000).toISOString().slice(0, 16);
    ({ orderId } = await done(planSeedOrder.run(society.secretary.caller, once({ name: 'Seed', closesAt }))));
    expect(await due(society.secretary)).toEqual(['open']);
    expect(await due(holder)).toEqual([]);
    const packs = [{ amount: '0.5', price: '2' }];
    const item = { orderId, cropKey: 'leek', variety: 'Long', unit: 'milligrams', packs };
    ({ itemId } = await done(addSeedItem.run(society.secretary.caller, once(item))));
    await done(openSeedOrder.run(society.secretary.caller, once({ orderId })));
    const { claims } = await readSeedOrder.run(holder.caller, { orderId });
    const line = await leeks();
    expect(claims[0]?.suggested?.amounts).toEqual({ [itemId]: line?.mass?.massMg });
    expect(line?.toOrder).toBe(90);
    // The secretary may put their list down, and does not see what they lack.
    const shown = await readSeedOrder.run(society.secretary.caller, { orderId, holdingId });
    expect(shown.claims).toMatchObject([{ mayPutDown: true, isOwn: false, suggested: null }]);
  });

  it('is due until it is answered, then to be fetched; and stands in the calendar while it takes lists', async () => {
    const { context, holdings } = await contextOf(holder);
    expect(await datesOfSeed(context, holdings)).toMatchObject([{ key: `seed-order ${orderId}`, code: 'seed-closes' }]);
    expect(await datesOfSeed(context, [])).toEqual([]);
    expect(await due(holder)).toEqual(['list-seed']);
    const wants = [{ itemId, amount: '0.3' }];
    await done(wantSeed.run(holder.caller, once({ orderId, holdingId, wants })));
    expect([await due(holder), await due(coHolder)]).toEqual([[], []]);
    const { caller } = society.secretary;
    await done(closeSeedOrder.run(caller, once({ orderId })));
    expect(await due(society.secretary)).toEqual(['order']);
    expect(await datesOfSeed(context, holdings)).toEqual([]);
    await done(markSeedOrdered.run(caller, once({ orderId, extra: '0' })));
    expect(await due(society.secretary)).toEqual(['tick-off']);
    const { id: packId } = await db().seedPack.findFirstOrThrow({ where: { itemId } });
    const packs = [{ packId, came: '1', price: '2' }];
    await done(noteSeedArrived.run(caller, once({ orderId, extra: '0', packs })));
    expect([await due(holder), await due(society.secretary)]).toEqual([['fetch-seed'], ['settle']]);
    await done(settleSeedOrder.run(caller, once({ orderId })));
    expect(await due(society.secretary)).toEqual([]);
  });
});
