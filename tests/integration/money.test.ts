import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { eraseMember } from '@/lib/usecases/members/keep-members';
import { chargeHoldings } from '@/lib/usecases/money/charge-holdings';
import { correctPrice, writeOff } from '@/lib/usecases/money/correct-price';
import { enterPayment, paySupplier } from '@/lib/usecases/money/enter-payment';
import { addAccount, retireAccount, takeUpAccount } from '@/lib/usecases/money/keep-accounts';
import { enterOpening, moveMoney } from '@/lib/usecases/money/move-money';
import { readAccount, readAccountCsv, readOwnAccounts } from '@/lib/usecases/money/read-account';
import { readLedger, readLedgerCsv } from '@/lib/usecases/money/read-ledger';
import { readBalancesCsv, readMoney } from '@/lib/usecases/money/read-money';
import { readReconciliation, readSeasonMoney } from '@/lib/usecases/money/read-reconciliation';
import { reverseEntry } from '@/lib/usecases/money/reverse-entry';
import { endTenancy } from '@/lib/usecases/plots/keep-tenancies';
import { collectDelivery, settledDelivery } from '../fixtures/settled-delivery';
import {
  done,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

type Holding = { holder: TestMember; holdingId: string; plotId: string };

const today = todayIn('Europe/London');

async function makePlace(holdings: number) {
  const society = await makeSociety();
  const treasurer = await makeMember(society, { roles: ['treasurer'] });
  const made: Holding[] = [];
  for (let nth = 1; nth <= holdings; nth++) {
    const holder = await makeMember(society, { email: `h${nth}@${society.slug}.example.org` });
    made.push({ holder, ...(await makePlot(society, `P${nth}`, [holder.id])) });
  }
  return { society, treasurer: treasurer.caller, secretary: society.secretary.caller, holdings: made };
}

const claimsOf = (holdings: readonly Holding[], loads: readonly number[]) =>
  loads.map((count, at) => {
    const one = holdings[at];
    if (!one) throw new Error('there are as many holdings');
    return { holder: one.holder.caller, holdingId: one.holdingId, loads: count };
  });

async function balances({ id }: TestSociety): Promise<Record<string, number>> {
  const rows = await db().ledgerLine.groupBy({ by: ['account'], where: { societyId: id }, _sum: { minor: true } });
  return Object.fromEntries(rows.map(({ account, _sum }) => [account, Number(_sum.minor)]));
}
const sumOf = (numbers: readonly number[]) => numbers.reduce((sum, one) => sum + one, 0);

describe('a delivery that is settled', () => {
  it('is charged to those who took loads, to the penny, and owed to its supplier', async () => {
    const { society, secretary, treasurer, holdings } = await makePlace(4);
    const deliveryId = await settledDelivery(secretary, { price: '100' }, claimsOf(holdings, [1, 2, 4, 0]));
    const [first, second, third, fourth] = holdings.map(({ holdingId }) => `holding:${holdingId}`);
    const stand = await balances(society);
    expect(stand[`purchases:${deliveryId}`]).toBe(0);
    expect(stand['other:suppliers']).toBe(-10_000);
    // 100 × 1/7, 2/7 and 4/7 of a pound: 14.285…, 28.571…, 57.142…; one odd penny by the lot.
    const parts = [first, second, third].map((account) => stand[account ?? ''] ?? 0);
    expect(sumOf(parts)).toBe(10_000);
    for (const [at, part] of parts.entries()) expect([0, 1]).toContain(part - ([1428, 2857, 5714][at] ?? 0));
    expect(stand).not.toHaveProperty(fourth ?? '');

    const read = await readReconciliation.run(treasurer, { deliveryId });
    expect(read).toMatchObject({ priceMinor: 10_000, chargedMinor: 10_000, leftMinor: 0, outstandingMinor: 10_000 });
    expect(read.parts.map(({ minor, again }) => again?.minor === minor)).toEqual([true, true, true]);
    expect(read.parts.filter(({ again }) => again?.reason.code === 'odd-penny')).toHaveLength(1);

    const mails = await db().mailMessage.findMany({ where: { societyId: society.id } });
    const told = mails.filter(({ subject }) => subject.includes('what you owe'));
    expect(told).toHaveLength(3);
    const mine = told.find(({ toAddress }) => toAddress.startsWith('h3@'));
    expect(mine?.body).toMatch(/^Your 4 loads of “A stable load”: £57\.1[45]\. £100\.00 are split by the 7 loads/);
  });

  it('is charged once, however often and by how many at once it is settled', async () => {
    const { society, secretary, holdings } = await makePlace(2);
    const deliveryId = await collectDelivery(secretary, { price: '9.99' }, claimsOf(holdings, [1, 1]));
    const given = once({ deliveryId });
    const outcomes = await Promise.all([
      ...Array.from({ length: 4 }, () => settleDelivery.run(secretary, once({ deliveryId }))),
      settleDelivery.run(secretary, given),
      settleDelivery.run(secretary, given),
    ]);
    const codes = outcomes.map((outcome) => (outcome.ok ? 'ok' : outcome.refusals.map(({ code }) => code).join()));
    expect(new Set(codes)).toEqual(new Set(['ok', 'step-not-now']));
    expect(await db().ledgerEntry.count({ where: { deliveryId, kind: 'charge' } })).toBe(1);
    expect(await db().ledgerEntry.count({ where: { deliveryId, kind: 'purchase' } })).toBe(1);
    expect((await balances(society))['other:suppliers']).toBe(-999);
  });

  it('posts nothing where it cost nothing', async () => {
    const { society, secretary, holdings } = await makePlace(1);
    await settledDelivery(secretary, {}, claimsOf(holdings, [3]));
    expect(await balances(society)).toEqual({});
  });

  it('that nobody took of leaves its price, until that is written off', async () => {
    const { society, secretary, treasurer, holdings } = await makePlace(1);
    const deliveryId = await settledDelivery(secretary, { price: '30' }, claimsOf(holdings, [0]));
    expect((await balances(society))[`purchases:${deliveryId}`]).toBe(3000);
    expect((await readReconciliation.run(treasurer, { deliveryId })).leftMinor).toBe(3000);
    const off = { deliveryId, reason: 'washed away' };
    const twice = await Promise.all([1, 2].map(() => writeOff.run(treasurer, once(off))));
    expect(twice.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await refusedWith(writeOff.run(treasurer, once(off)))).toEqual(['nothing-left-over']);
    const read = await readReconciliation.run(treasurer, { deliveryId });
    expect(read).toMatchObject({ leftMinor: 0, writtenOffMinor: 3000, chargedMinor: 0 });
    expect((await balances(society))['other:society']).toBe(3000);
  });
});

describe('a wrong price', () => {
  it('is taken back and charged anew by the same split; what was paid stays paid', async () => {
    const { society, secretary, treasurer, holdings } = await makePlace(3);
    const deliveryId = await settledDelivery(secretary, { price: '90' }, claimsOf(holdings, [1, 1, 1]));
    const holdingId = holdings[0]?.holdingId ?? '';
    await done(enterPayment.run(treasurer, once({ holdingId, amount: '30', on: today, into: 'bank', words: '' })));
    const right = { deliveryId, price: '100.01', reason: 'the invoice' };
    await done(correctPrice.run(treasurer, once(right)));
    expect(await refusedWith(correctPrice.run(treasurer, once(right)))).toEqual(['price-unchanged']);
    const read = await readReconciliation.run(treasurer, { deliveryId });
    expect(read).toMatchObject({ priceMinor: 10_001, chargedMinor: 10_001, leftMinor: 0 });
    expect(sumOf(read.parts.map(({ minor }) => minor))).toBe(10_001);
    expect(read.parts.every(({ minor, again }) => again?.minor === minor)).toBe(true);
    expect(read.outstandingMinor).toBe(7001);
    // Bought, charged, both taken back, bought and charged anew.
    expect(read.entries.map(({ kind }) => kind).toReversed()).toEqual([
      'purchase',
      'charge',
      'correction',
      'correction',
      'purchase',
      'charge',
    ]);
    expect((await balances(society))['other:suppliers']).toBe(-10_001);
    expect(await db().delivery.findUnique({ where: { id: deliveryId } })).toMatchObject({ priceMinor: 10_001 });

    await done(correctPrice.run(treasurer, once({ deliveryId, price: '0', reason: 'a gift after all' })));
    const free = await readReconciliation.run(treasurer, { deliveryId });
    expect(free).toMatchObject({ priceMinor: 0, chargedMinor: 0, leftMinor: 0, outstandingMinor: 0, parts: [] });
    expect((await balances(society))[`holding:${holdingId}`]).toBe(-3000);
    const told = await db().mailMessage.findMany({
      where: { societyId: society.id, toAddress: { startsWith: 'h1@' } },
    });
    const about = told.map(({ subject, body }) => `${subject}. ${body}`).filter((text) => / owed? /.test(text));
    expect(about.map((text) => /in place|takes the place|nothing after all/.exec(text)?.[0])).toEqual([
      undefined,
      'takes the place',
      'nothing after all',
    ]);
  });

  it('put right by two at once is one price in the end, and its entries are those of one price', async () => {
    const { secretary, treasurer, holdings } = await makePlace(2);
    const deliveryId = await settledDelivery(secretary, { price: '10' }, claimsOf(holdings, [1, 2]));
    const prices = ['11', '12', '13', '11'];
    await Promise.all(prices.map((price) => correctPrice.run(treasurer, once({ deliveryId, price, reason: 'r' }))));
    const read = await readReconciliation.run(treasurer, { deliveryId });
    expect([1100, 1200, 1300]).toContain(read.priceMinor);
    expect(read).toMatchObject({ chargedMinor: read.priceMinor, leftMinor: 0, outstandingMinor: read.priceMinor });
  });

  it('before it is settled is changed on the delivery, not here', async () => {
    const { secretary, treasurer, holdings } = await makePlace(1);
    const deliveryId = await collectDelivery(secretary, { price: '10' }, claimsOf(holdings, [1]));
    const early = correctPrice.run(treasurer, once({ deliveryId, price: '11', reason: 'r' }));
    expect(await refusedWith(early)).toEqual(['step-not-now']);
  });
});

describe('the treasurer', () => {
  let place: Awaited<ReturnType<typeof makePlace>>;
  let deliveryId: string;
  let seedId: string;
  const on = addDays(today, -3);

  beforeAll(async () => {
    place = await makePlace(3);
    deliveryId = await settledDelivery(place.secretary, { price: '60' }, claimsOf(place.holdings, [1, 2, 3]));
    seedId = (await done(addAccount.run(place.treasurer, once({ name: 'Seed' })))).accountId;
  });

  it('enters payments, charges, a supplier, moves and openings, and the ledger sums to nothing', async () => {
    const { treasurer, holdings, society } = place;
    const holdingId = holdings[2]?.holdingId ?? '';
    await done(enterOpening.run(treasurer, once({ account: 'bank', side: 'has', amount: '200', on })));
    await done(enterOpening.run(treasurer, once({ account: 'other:seed', side: 'owes', amount: '5', on })));
    await done(enterPayment.run(treasurer, once({ holdingId, amount: '12,50', on, into: 'cash', words: 'w' })));
    await done(paySupplier.run(treasurer, once({ deliveryId, amount: '60', on, from: 'bank', words: 'w' })));
    await done(moveMoney.run(treasurer, once({ from: 'cash', to: 'bank', amount: '10', on, words: 'w' })));
    const rents = { who: 'plots', account: 'other:seed', amount: '2', on, words: 'w' };
    expect(await done(chargeHoldings.run(treasurer, once(rents)))).toMatchObject({ holdings: 3, minor: 600 });
    await done(chargeHoldings.run(treasurer, once({ ...rents, who: holdingId, amount: '0.05' })));
    const stand = await balances(society);
    expect(stand).toMatchObject({
      bank: 20_000 - 6000 + 1000,
      cash: 1250 - 1000,
      'other:suppliers': 0,
      'other:seed': -500 - 600 - 5,
      'other:society': -20_000 + 500,
      [`holding:${holdingId}`]: 3000 - 1250 + 200 + 5,
    });
    expect(sumOf(Object.values(stand))).toBe(0);
    const money = await readMoney.run(treasurer, {});
    expect(money.sumMinor).toBe(0);
    expect(sumOf([...money.holdings, ...money.others].map(({ minor }) => minor))).toBe(0);
  });

  it('reads each account’s statement, which closes with its balance, and why a share is what it is', async () => {
    const { holdings, treasurer, society } = place;
    const stand = await balances(society);
    for (const { holder, holdingId } of holdings) {
      const { statement, balanceMinor } = await readAccount.run(treasurer, { holdingId });
      expect(balanceMinor).toBe(stand[`holding:${holdingId}`]);
      expect(statement.closingMinor).toBe(balanceMinor);
      expect(statement.openingMinor + sumOf(statement.lines.map(({ minor }) => minor))).toBe(statement.closingMinor);
      const [own] = (await readOwnAccounts.run(holder.caller, {})).accounts;
      expect(own?.statement).toEqual(statement);
    }
    const [, second] = holdings;
    const { statement } = await readAccount.run(treasurer, { holdingId: second?.holdingId ?? '' });
    const share = statement.lines.find(({ deliveryId: of }) => of === deliveryId)?.share;
    expect(share).toMatchObject({ priceMinor: 6000, loads: 2, allLoads: 6, minor: 2000, reason: { code: 'exact' } });
    const before = await readAccount.run(treasurer, {
      holdingId: second?.holdingId ?? '',
      from: addDays(today, 1),
      to: addDays(today, 9),
    });
    expect(before.statement).toMatchObject({ lines: [], openingMinor: 2200, closingMinor: 2200 });
  });

  it('pays the oldest charge first, so that what is outstanding of a season is what its holders owe', async () => {
    const { treasurer } = place;
    const { parts } = await readReconciliation.run(treasurer, { deliveryId });
    // Entered on a day before the delivery was charged: the payment of 12.50 went to the 2.05 of then first.
    expect(parts.map(({ outstandingMinor }) => outstandingMinor)).toEqual([1000, 2000, 1955]);
    const season = await readSeasonMoney.run(treasurer, { season: Number(addDays(today, 10).slice(0, 4)) });
    expect(season.rows.map(({ delivery }) => delivery.id)).toEqual([deliveryId]);
    expect(season.rows[0]).toMatchObject({ priceMinor: 6000, chargedMinor: 6000, supplierPaidMinor: 6000 });
  });

  it('takes an entry back once, though two do so at the same time; the other is told', async () => {
    const { treasurer, secretary, holdings } = place;
    const holdingId = holdings[0]?.holdingId ?? '';
    const payment = { holdingId, amount: '4', on, into: 'bank', words: '' };
    const { entryId } = await done(enterPayment.run(treasurer, once(payment)));
    const back = { entryId, reason: 'another plot’s', sure: 'yes' };
    const outcomes = await Promise.all(
      [treasurer, secretary, treasurer].map((who) => reverseEntry.run(who, once(back))),
    );
    const codes = outcomes.map((outcome) => (outcome.ok ? 'ok' : outcome.refusals[0]?.code));
    expect(codes.toSorted()).toEqual(['ok', 'reversed-already', 'reversed-already']);
    expect(await db().ledgerEntry.count({ where: { reversesId: entryId } })).toBe(1);
    const [correction] = await db().ledgerEntry.findMany({ where: { reversesId: entryId } });
    expect(await refusedWith(reverseEntry.run(treasurer, once({ ...back, entryId: correction?.id ?? '' })))).toEqual([
      'is-correction',
    ]);
  });

  it('cannot take the price of a delivery back by its entries alone', async () => {
    const entries = await db().ledgerEntry.findMany({ where: { deliveryId, kind: { in: ['purchase', 'charge'] } } });
    expect(entries).toHaveLength(2);
    for (const { id: entryId } of entries)
      expect(await refusedWith(reverseEntry.run(place.treasurer, once({ entryId, reason: 'r', sure: 'yes' })))).toEqual(
        ['entry-of-delivery'],
      );
  });

  it('enters nothing of a day to come, between one account and itself, or on an account that is not there', async () => {
    const { treasurer, holdings } = place;
    const holdingId = holdings[0]?.holdingId ?? '';
    const move = { from: 'bank', to: 'cash', amount: '1', on, words: 'w' };
    const later = { holdingId, amount: '1', on: addDays(today, 1), into: 'bank', words: '' };
    expect(await refusedWith(enterPayment.run(treasurer, once(later)))).toEqual(['day-to-come']);
    expect(await refusedWith(moveMoney.run(treasurer, once({ ...move, to: 'bank' })))).toEqual(['same-account']);
    expect(await refusedWith(moveMoney.run(treasurer, once({ ...move, to: 'other:nothing' })))).toEqual([
      'account-unknown',
    ]);
    const ofDelivery = { ...move, to: `purchases:${deliveryId}` };
    expect(await refusedWith(moveMoney.run(treasurer, once(ofDelivery)))).toEqual(['account-unknown']);
    const early = { who: 'plots', account: 'other:seed', amount: '1', on: '1990-01-01', words: 'w' };
    expect(await refusedWith(chargeHoldings.run(treasurer, once(early)))).toEqual(['nobody-to-charge']);
    const toBank = { who: holdingId, account: 'bank', amount: '1', on, words: 'w' };
    expect(await refusedWith(chargeHoldings.run(treasurer, once(toBank)))).toEqual(['account-unknown']);
  });

  it('adds an account once, retires it when nothing stands on it, and takes it up again', async () => {
    const { treasurer } = place;
    expect(await refusedWith(addAccount.run(treasurer, once({ name: ' SEED ' })))).toEqual(['account-name-taken']);
    expect(await refusedWith(addAccount.run(treasurer, once({ name: 'Suppliers' })))).toEqual(['account-built-in']);
    const keys = await Promise.all([1, 2, 3].map(() => addAccount.run(treasurer, once({ name: 'Keys' }))));
    expect(keys.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await refusedWith(retireAccount.run(treasurer, once({ accountId: seedId })))).toEqual(['account-not-empty']);
    const stand = (await balances(place.society))['other:seed'] ?? 0;
    const clear = { from: 'bank', to: 'other:seed', amount: (-stand / 100).toFixed(2), on, words: 'w' };
    await done(moveMoney.run(treasurer, once(clear)));
    await done(retireAccount.run(treasurer, once({ accountId: seedId })));
    expect(await refusedWith(moveMoney.run(treasurer, once(clear)))).toEqual(['account-retired']);
    await done(takeUpAccount.run(treasurer, once({ accountId: seedId })));
    await done(moveMoney.run(treasurer, once({ ...clear, from: 'other:seed', to: 'bank' })));
  });

  it('reads the ledger by account, kind and day, and keeps tables in which no cell begins a formula', async () => {
    const { treasurer, holdings } = place;
    const all = await readLedger.run(treasurer, {});
    expect(all.count).toBe(await db().ledgerEntry.count({ where: { societyId: place.society.id } }));
    const cash = await readLedger.run(treasurer, { account: 'cash', kind: 'transfer', from: on, to: on });
    expect(cash.entries.map(({ kind, lines }) => [kind, lines.some(({ account }) => account === 'cash')])).toEqual([
      ['transfer', true],
    ]);
    const holdingId = holdings[2]?.holdingId ?? '';
    const wild = { holdingId, amount: '1', on, into: 'cash', words: '=1+1' };
    await done(enterPayment.run(treasurer, once(wild)));
    const texts = [
      (await readLedgerCsv.run(treasurer, {})).text,
      (await readBalancesCsv.run(treasurer, {})).text,
      (await readAccountCsv.run(holdings[2]?.holder.caller ?? treasurer, { holdingId })).text,
    ];
    expect(texts[0]).toContain("'=1+1");
    expect(texts[2]).toContain("'=1+1");
    for (const text of texts) for (const cell of text.split(/[,\n\r]/)) expect(cell).not.toMatch(/^"?[=+\-@\t]/);
    const rows = (texts[0] ?? '')
      .trim()
      .split('\n')
      .slice(1)
      .map((row) => row.split(','));
    const pence = (cell = '') => Math.round(Number(cell) * 100);
    expect(sumOf(rows.map((row) => pence(row.at(-2)) - pence(row.at(-1))))).toBe(0);
  });
});

describe('an account outlives its holding and its holders', () => {
  it('stays with its balance for the treasurer and for who held it last', async () => {
    const { society, secretary, treasurer, holdings } = await makePlace(2);
    await settledDelivery(secretary, { price: '8' }, claimsOf(holdings, [1, 3]));
    const [leaver, stays] = holdings;
    if (!leaver || !stays) throw new Error('there are two');
    await done(endTenancy.run(secretary, once({ plotId: leaver.plotId, from: today, sure: 'yes' })));
    const mine = await readOwnAccounts.run(leaver.holder.caller, {});
    expect(mine.accounts.map(({ balanceMinor, holder }) => [balanceMinor, holder.plots])).toEqual([[200, ['P1']]]);
    const { holdings: listed } = await readMoney.run(treasurer, {});
    expect(listed.find(({ holdingId }) => holdingId === leaver.holdingId)).toMatchObject({
      minor: 200,
      endedOn: today,
    });
    // Whoever takes the plot over does not take the account over.
    const next = await makeMember(society);
    expect((await readOwnAccounts.run(next.caller, {})).accounts).toEqual([]);
    await expect(readAccount.run(stays.holder.caller, { holdingId: leaver.holdingId })).rejects.toThrow();

    await db().member.update({ where: { id: leaver.holder.id }, data: { leftOn: new Date(today) } });
    await done(eraseMember.run(secretary, once({ memberId: leaver.holder.id, sure: 'yes' })));
    const erased = (await readMoney.run(treasurer, {})).holdings.find(
      ({ holdingId }) => holdingId === leaver.holdingId,
    );
    expect(erased).toMatchObject({ minor: 200, members: [{ name: 'a former member' }] });
    const last = { holdingId: leaver.holdingId, amount: '2', on: today, into: 'cash', words: '' };
    await done(enterPayment.run(treasurer, once(last)));
    expect((await readMoney.run(treasurer, {})).holdings.map(({ holdingId }) => holdingId)).toEqual([stays.holdingId]);
  });
});
