import { randomUUID } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import type { Caller } from '@/lib/usecases/operation';
import { readOwnAccounts } from '@/lib/usecases/money/read-account';
import { reverseEntry } from '@/lib/usecases/money/reverse-entry';
import { handOutSeed, keepOrderedSeed } from '@/lib/usecases/seed/hand-out';
import { addSeedItem } from '@/lib/usecases/seed/keep-items';
import { markSeedOrdered, noteSeedArrived } from '@/lib/usecases/seed/order-packs';
import { callOffSeedOrder, closeSeedOrder, openSeedOrder, planSeedOrder } from '@/lib/usecases/seed/plan-order';
import { readOfficeSeedOrder } from '@/lib/usecases/seed/read-office-order';
import { readSeedOrder } from '@/lib/usecases/seed/read-orders';
import { readTin } from '@/lib/usecases/seed/read-seed';
import { correctSeedOrder, settleSeedOrder } from '@/lib/usecases/seed/settle-order';
import { wantSeed } from '@/lib/usecases/seed/want-seed';
import { done, makeMember, makePlot, makeSociety, once, refusedWith } from '../fixtures/society';
import { answered, startWorker } from '../fixtures/process';
import type { Task } from '../fixtures/worker';

type Holder = { readonly caller: Caller; readonly holdingId: string };

let society: Awaited<ReturnType<typeof makeSociety>>;
let secretary: Caller;
let holders: Holder[];

beforeAll(async () => {
  society = await makeSociety();
  secretary = society.secretary.caller;
  holders = [];
  for (let at = 0; at < 22; at++) {
    const { id, caller } = await makeMember(society);
    holders.push({ caller, holdingId: (await makePlot(society, `P${at + 1}`, [id])).holdingId });
  }
});

const inAWeek = () => new Date(Date.now() + 7 * 86_400_000).toISOString().slice(0, 16);

async function plan(): Promise<{ orderId: string; leek: string; carrot: string; garlic: string }> {
  const order = once({ name: `Seed ${randomUUID().slice(0, 4)}`, closesAt: inAWeek() });
  const { orderId } = await done(planSeedOrder.run(secretary, order));
  const add = async (cropKey: string, unit: string, packs: readonly { amount: string; price: string }[]) =>
    (await done(addSeedItem.run(secretary, once({ orderId, cropKey, variety: cropKey, unit, packs })))).itemId;
  const leek = await add('leek', 'seeds', [
    { amount: '100', price: '1.50' },
    { amount: '250', price: '2.90' },
  ]);
  const carrot = await add('carrot', 'milligrams', [{ amount: '2.5', price: '1.99' }]);
  const garlic = await add('garlic', 'sets', [{ amount: '10', price: '3.33' }]);
  return { orderId, leek, carrot, garlic };
}

async function open() {
  const made = await plan();
  await done(openSeedOrder.run(secretary, once({ orderId: made.orderId })));
  return made;
}

type Open = Awaited<ReturnType<typeof open>>;

// Everybody wants leeks, every second carrots, every third garlic; amounts differ.
function listOf({ orderId, leek, carrot, garlic }: Open, at: number) {
  const wants = [
    { itemId: leek, amount: String(20 + 7 * at) },
    ...(at % 2 ? [{ itemId: carrot, amount: `0.${at + 10}` }] : []),
    ...(at % 3 ? [] : [{ itemId: garlic, amount: String(at + 1) }]),
  ];
  return once({ orderId, holdingId: holders[at]?.holdingId ?? '', wants });
}

async function putDown(order: Open, which: readonly Holder[] = holders) {
  for (const [at, { caller }] of which.entries()) await done(wantSeed.run(caller, listOf(order, at)));
}

const read = (orderId: string) => readOfficeSeedOrder.run(secretary, { orderId });
const packsOf = async (orderId: string) =>
  db().seedPack.findMany({ where: { item: { orderId } }, orderBy: [{ itemId: 'asc' }, { amount: 'asc' }] });

async function arriveWith(
  orderId: string,
  cameOf: (pack: { amount: number; ordered: number }) => number,
  extra = '4.50',
) {
  const packs = (await packsOf(orderId)).map(({ id, amount, ordered, priceMinor }) => ({
    packId: id,
    came: String(cameOf({ amount, ordered: ordered ?? 0 })),
    price: (priceMinor / 100).toFixed(2),
  }));
  return noteSeedArrived.run(secretary, once({ orderId, extra, packs }));
}

const everything = ({ ordered }: { ordered: number }) => ordered;

const balanceOf = async (account: string) =>
  Number(
    (await db().ledgerLine.aggregate({ where: { societyId: society.id, account }, _sum: { minor: true } }))._sum.minor,
  );

async function expectBalanced() {
  const sums = await db().ledgerLine.groupBy({
    by: ['entryId'],
    where: { societyId: society.id },
    _sum: { minor: true },
  });
  expect(sums.map(({ _sum }) => Number(_sum.minor)).filter((minor) => minor !== 0)).toEqual([]);
}

describe('twenty-two lists in one order', () => {
  let order: Open;
  const owedBefore = new Map<string, number>();

  it('are pooled, and bought in whole packs', async () => {
    order = await open();
    await putDown(order);
    await done(closeSeedOrder.run(secretary, once({ orderId: order.orderId })));
    const { pooled, holders: wanting } = await read(order.orderId);
    expect(wanting).toHaveLength(22);
    // 22 × 20 + 7 × 231 leeks: eight packs of 250 leave 57 for one of 100, which is cheaper than a ninth.
    expect(pooled.lines[0]).toMatchObject({ wanted: 2057, packs: { counts: [1, 8], priceMinor: 2470, over: 43 } });
    expect(pooled.lines[2]).toMatchObject({ wanted: 92, packs: { counts: [10], priceMinor: 3330, over: 8 } });
  });

  it('are refused once the lists are closed, in words with the time', async () => {
    expect(await refusedWith(wantSeed.run(holders[0]?.caller as Caller, listOf(order, 0)))).toEqual(['list-closed']);
  });

  it('are ordered once, however often it is sent', async () => {
    const sent = once({ orderId: order.orderId, extra: '4.50' });
    const first = await done(markSeedOrdered.run(secretary, sent));
    expect(await done(markSeedOrdered.run(secretary, sent))).toEqual(first);
    expect(await refusedWith(markSeedOrdered.run(secretary, once({ orderId: order.orderId, extra: '0' })))).toEqual([
      'order-not-now',
    ]);
    expect((await packsOf(order.orderId)).map(({ ordered }) => ordered)).not.toContain(null);
  });

  it('come, but for two packs of leeks, which are shared up to a level', async () => {
    await done(arriveWith(order.orderId, ({ amount, ordered }) => (amount === 250 ? ordered - 2 : ordered)));
    const { pooled } = await read(order.orderId);
    const [leeks] = pooled.lines;
    const given = leeks?.shares.map(({ loads }) => loads) ?? [];
    expect(given.reduce((sum, count) => sum + count, 0)).toBe(1600);
    const level = leeks?.level ?? 0;
    const wants = holders.map((_, at) => 20 + 7 * at);
    for (const want of await db().seedWant.findMany({ where: { itemId: order.leek } })) {
      expect(want.given).toBeGreaterThanOrEqual(Math.min(want.amount, level));
      expect(want.given).toBeLessThanOrEqual(Math.min(want.amount, level + 1));
    }
    expect(wants.some((want) => want > level)).toBe(true);
    expect(pooled.owed.reduce((sum, { minor }) => sum + minor, 0)).toBe(pooled.seedMinor + 450);
  });

  it('are handed out; what is in somebody’s hands is not worked out anew', async () => {
    const [first] = holders;
    const { orderId } = order;
    await done(handOutSeed.run(secretary, once({ orderId, holdingId: first?.holdingId, out: 'yes' })));
    expect(await refusedWith(arriveWith(orderId, () => 0))).toEqual(['handed-out-already']);
    await done(arriveWith(orderId, ({ amount, ordered }) => (amount === 250 ? ordered - 2 : ordered)));
  });

  it('are charged exactly, in one entry that balances', async () => {
    const { pooled, order: shown } = await read(order.orderId);
    const sent = once({ orderId: order.orderId });
    await done(settleSeedOrder.run(secretary, sent));
    await done(settleSeedOrder.run(secretary, sent));
    expect(await refusedWith(settleSeedOrder.run(secretary, once({ orderId: order.orderId })))).toEqual([
      'order-not-now',
    ]);
    const entries = await db().ledgerEntry.findMany({ where: { societyId: society.id }, include: { lines: true } });
    expect(entries).toHaveLength(1);
    expect(entries[0]?.lines).toHaveLength(23);
    for (const { holdingId, minor } of pooled.owed) {
      expect(await balanceOf(`holding:${holdingId}`)).toBe(minor);
      owedBefore.set(holdingId, minor);
    }
    expect(await balanceOf('other:suppliers')).toBe(-(pooled.seedMinor + shown.extraMinor));
    await expectBalanced();
    const [account] = (await readOwnAccounts.run(holders[3]?.caller as Caller, { from: null, to: null })).accounts;
    expect(account?.balanceMinor).toBe(owedBefore.get(holders[3]?.holdingId ?? ''));
    expect(account?.statement.lines.map(({ words }) => words)).toEqual([shown.name]);
  });

  it('are put right by reversal alone: what came after all is charged anew', async () => {
    const { orderId } = order;
    const { entryId } = (await read(orderId)).order;
    const back = once({ entryId: entryId ?? '', reason: 'r', sure: 'yes' });
    expect(await refusedWith(reverseEntry.run(secretary, back))).toEqual(['entry-of-seed-order']);
    await done(correctSeedOrder.run(secretary, once({ orderId, reason: 'The two packs came after all' })));
    expect(await balanceOf('other:suppliers')).toBe(0);
    await done(handOutSeed.run(secretary, once({ orderId, holdingId: holders[0]?.holdingId })));
    await done(arriveWith(orderId, everything));
    await done(settleSeedOrder.run(secretary, once({ orderId })));
    const { pooled } = await read(orderId);
    for (const { holdingId, minor } of pooled.owed) expect(await balanceOf(`holding:${holdingId}`)).toBe(minor);
    expect(pooled.lines.every(({ level }) => level === null)).toBe(true);
    expect(await db().ledgerEntry.count({ where: { societyId: society.id } })).toBe(3);
    await expectBalanced();
  });

  it('go into the tin in one press, once, and garlic does not', async () => {
    const [first] = holders;
    const sent = { orderId: order.orderId, holdingId: first?.holdingId ?? '' };
    expect(await done(keepOrderedSeed.run(first?.caller as Caller, once(sent)))).toEqual({ packets: 1 });
    expect(await refusedWith(keepOrderedSeed.run(first?.caller as Caller, once(sent)))).toEqual([
      'nothing-for-the-tin',
    ]);
    const tin = await readTin.run(first?.caller as Caller, { holdingId: null });
    expect(tin.packets).toMatchObject([{ cropKey: 'leek', seeds: 20, isOrdered: true, state: { code: 'sound' } }]);
  });

  it('show nobody what another wants', async () => {
    const seen = JSON.stringify(await readSeedOrder.run(holders[1]?.caller as Caller, { orderId: order.orderId }));
    for (const { holdingId } of holders.filter((_, at) => at !== 1)) expect(seen).not.toContain(holdingId);
    expect(seen).not.toContain('2057');
  });

  it('told everybody when it opened, those who want some when it came, and each what they owe', async () => {
    const mails = await db().mailMessage.findMany({ where: { societyId: society.id } });
    const count = (part: string) => mails.filter(({ subject }) => subject.includes(part)).length;
    expect(count('is open')).toBe(23);
    expect(count('is here')).toBe(22);
    // Settled twice, since it was put right in between.
    expect(count('what you owe')).toBe(44);
  });
});

describe('lists and their closing', () => {
  it('are changed and withdrawn until then, each sending counted once', async () => {
    const order = await open();
    const [one] = holders as [Holder];
    const put = (amount: string, itemId = order.leek) =>
      once({ orderId: order.orderId, holdingId: one.holdingId, wants: [{ itemId, amount }] });
    const sent = put('30');
    await done(wantSeed.run(one.caller, sent));
    expect(await done(wantSeed.run(one.caller, sent))).toEqual({ items: 1 });
    await done(wantSeed.run(one.caller, put('45')));
    await done(wantSeed.run(one.caller, put('1.5', order.carrot)));
    const stand = async () =>
      (await db().seedWant.findMany({ where: { item: { orderId: order.orderId }, withdrawnAt: null } }))
        .map(({ amount }) => amount)
        .sort((a, b) => a - b);
    expect(await stand()).toEqual([45, 1500]);
    await done(wantSeed.run(one.caller, put('')));
    expect(await stand()).toEqual([1500]);
    await done(wantSeed.run(one.caller, put('60')));
    expect(await stand()).toEqual([60, 1500]);
  });

  it('close at their instant for whoever is late, and open again by a later closing', async () => {
    const order = await open();
    await db().seedOrder.update({ where: { id: order.orderId }, data: { closesAt: new Date(Date.now() - 1) } });
    expect(await refusedWith(wantSeed.run(holders[0]?.caller as Caller, listOf(order, 0)))).toEqual(['list-closed']);
    expect(await refusedWith(closeSeedOrder.run(secretary, once({ orderId: order.orderId })))).toEqual([
      'order-not-now',
    ]);
    expect((await read(order.orderId)).order.state).toBe('closed');
  });

  it('crossing with the order are in it, or refused: what is ordered covers what stands', async () => {
    const order = await open();
    await putDown(order, holders.slice(0, 3));
    const late = holders.slice(3).map((holder, at) => wantSeed.run(holder.caller, listOf(order, at + 3)));
    const closed = closeSeedOrder
      .run(secretary, once({ orderId: order.orderId }))
      .then(() => markSeedOrdered.run(secretary, once({ orderId: order.orderId, extra: '0' })));
    const outcomes = await Promise.all(late);
    expect(await closed).toMatchObject({ ok: true });
    const stand = await db().seedWant.findMany({ where: { itemId: order.leek } });
    expect(stand).toHaveLength(3 + outcomes.filter(({ ok }) => ok).length);
    const { pooled } = await read(order.orderId);
    for (const { wanted, packs } of pooled.lines) expect(packs.amount).toBeGreaterThanOrEqual(wanted);
  });

  it('of nobody are not ordered, of nothing not opened; called off, everybody is told and nothing owed', async () => {
    const { orderId } = await done(planSeedOrder.run(secretary, once({ name: 'Empty', closesAt: inAWeek() })));
    expect(await refusedWith(openSeedOrder.run(secretary, once({ orderId })))).toEqual(['nothing-listed']);
    const order = await open();
    await done(closeSeedOrder.run(secretary, once({ orderId: order.orderId })));
    expect(await refusedWith(markSeedOrdered.run(secretary, once({ orderId: order.orderId, extra: '0' })))).toEqual([
      'nobody-wants-any',
    ]);
    await done(callOffSeedOrder.run(secretary, once({ orderId: order.orderId, sure: 'yes' })));
    expect(
      await db().mailMessage.count({ where: { societyId: society.id, subject: { contains: 'is called off' } } }),
    ).toBe(23);
  });
});

describe('two app processes', { timeout: 120_000 }, () => {
  it('that close, order and settle at once do each once, and the ledger balances', async () => {
    const order = await open();
    await putDown(order);
    const { orderId } = order;
    const entries = await db().ledgerEntry.count({ where: { societyId: society.id } });
    const workers = [startWorker(), startWorker()];
    const both = async (operation: Task['operation'], input: object) => {
      const tasks = workers.map((): Task => ({ operation, caller: secretary, input: once(input) }));
      const said = await Promise.all(workers.map((worker, nth) => answered(worker, tasks.slice(nth, nth + 1))));
      return said.flatMap((answers) => [...answers.values()].map(({ ok, code }) => (ok ? 'done' : code))).sort();
    };
    expect(await both('close seed', { orderId })).toEqual(['done', 'order-not-now']);
    expect(await both('order seed', { orderId, extra: '2' })).toEqual(['done', 'order-not-now']);
    // Nothing comes but the bill for postage: the society bears it.
    await done(arriveWith(orderId, () => 0, '2'));
    expect(await both('settle seed', { orderId })).toEqual(['done', 'order-not-now']);
    expect(await db().ledgerEntry.count({ where: { societyId: society.id } })).toBe(entries + 1);
    expect(await balanceOf('other:society')).toBe(200);
    await expectBalanced();
  });
});
