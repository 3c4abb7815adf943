import { parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { addDays, calendarDate } from '@/lib/domain/calendar/calendar-date';
import { seasonDays } from '@/lib/domain/season/season-days';
import { todayIn } from '@/lib/platform/clock';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { enterBeyond, giveUp, tickOff } from '@/lib/usecases/deliveries/collect';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
import { seasonServed } from '@/lib/usecases/ground/holding-need';
import { NotFound } from '@/lib/usecases/refusal';
import { readSeason, readSeasonCsv } from '@/lib/usecases/season/read-season';
import {
  deliveryFacts,
  done,
  makeMember,
  makePlot,
  makeSociety,
  once,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

let society: TestSociety;
let holders: { member: TestMember; holdingId: string }[];
const today = todayIn('Europe/London');
// Ten days on, the day on which what is planned below comes.
const season = seasonServed(addDays(today, 10));

const ask = (change: object = {}) => readSeason.run(society.secretary.caller, { season, ...change });

async function open(materialKey: string, densityGPerL: string, asked: readonly number[]): Promise<string> {
  const { caller } = society.secretary;
  const facts = deliveryFacts({ name: `A load of ${materialKey}`, materialKey, densityGPerL, price: '10.00' });
  const { deliveryId } = await done(planDelivery.run(caller, once(facts)));
  await done(openDelivery.run(caller, once({ deliveryId })));
  for (const [nth, loads] of asked.entries()) {
    if (loads === 0) continue;
    const { member, holdingId } = holders[nth] as (typeof holders)[number];
    await done(bookLoads.run(member.caller, once({ deliveryId, holdingId, asked: String(loads), beds: [] })));
  }
  return deliveryId;
}

const bookingsOf = async (deliveryId: string) => {
  const rows = await db().booking.findMany({ where: { deliveryId } });
  return holders.map(({ holdingId }) => rows.find((row) => row.holdingId === holdingId) as (typeof rows)[number]);
};

async function share(deliveryId: string, loads: number) {
  const { caller } = society.secretary;
  await done(closeDelivery.run(caller, once({ deliveryId })));
  await done(measureHeap.run(caller, once({ deliveryId, loads: String(loads) })));
  await done(confirmShareOut.run(caller, once({ deliveryId })));
}

/** An entry of the ledger: what holdings are charged for a delivery, or what one of them has paid. */
async function post(
  kind: string,
  on: string,
  deliveryId: string | null,
  lines: readonly (readonly [string, bigint])[],
) {
  const { id: societyId, secretary } = society;
  const against = kind === 'payment' ? 'bank' : `purchases:${deliveryId}`;
  const total = lines.reduce((sum, [, minor]) => sum + minor, 0n);
  await db().$transaction(async (tx) => {
    const data = { societyId, kind, on: new Date(on), words: kind, deliveryId, madeByMemberId: secretary.id };
    const { id: entryId } = await tx.ledgerEntry.create({ data });
    const own = lines.map(([holdingId, minor]) => ({ account: `holding:${holdingId}`, holdingId, minor }));
    for (const line of [...own, { account: against, holdingId: null, minor: -total }])
      await tx.ledgerLine.create({ data: { societyId, entryId, ...line } });
  });
}

beforeAll(async () => {
  society = await makeSociety();
  holders = [];
  for (const number of ['10', '2', '=3']) {
    const member = await makeMember(society, { name: `Named ${number}`, email: null });
    const { holdingId } = await makePlot(society, number, [member.id], false);
    holders.push({ member, holdingId });
  }
  const first = await open('horse-manure', '400', [4, 4, 4]);
  await share(first, 10);
  const [one, two, three] = await bookingsOf(first);
  // One collects all, one takes a load and gives up the rest, one takes beyond what it was given.
  const tick = (member: TestMember, bookingId: string, loads: number) =>
    done(tickOff.run(member.caller, once({ deliveryId: first, bookingId, loads: String(loads) })));
  await tick(holders[1]?.member as TestMember, two?.id ?? '', 1);
  await done(
    giveUp.run(
      holders[1]?.member.caller as TestMember['caller'],
      once({ deliveryId: first, bookingId: two?.id ?? '' }),
    ),
  );
  const [given, , other] = await bookingsOf(first);
  await tick(holders[0]?.member as TestMember, one?.id ?? '', given?.share ?? 0);
  await tick(holders[2]?.member as TestMember, three?.id ?? '', other?.share ?? 0);
  const beyond = { deliveryId: first, bookingId: three?.id ?? '', loads: '1', reason: 'it lay there' };
  await done(enterBeyond.run(society.secretary.caller, once(beyond)));
  await done(settleDelivery.run(society.secretary.caller, once({ deliveryId: first })));
  await open('cattle-manure', '750', [2, 0, 3]);
});

describe('after the season', () => {
  it('adds up by delivery, by holding and in all, as the database has it', async () => {
    const { parts } = await ask();
    expect(parts).toHaveLength(1);
    const [part] = parts;
    if (!part) return expect.fail('there are barrow-loads');
    const rows = await db().booking.findMany({ where: { societyId: society.id, withdrawnAt: null } });
    const sumOf = (key: 'collectedLoads' | 'beyondLoads') => rows.reduce((all, row) => all + row[key], 0);
    expect(part.total).toMatchObject({ collected: sumOf('collectedLoads'), beyond: sumOf('beyondLoads') });
    expect(part.total.beyond).toBe(1);
    // Asked as booking closed: the load given up later is not forgotten.
    expect(part.total.asked).toBe(12 + 5);
    expect(part.deliveries[0]).toMatchObject({ heapLoads: 10, collected: 10, leftLoads: 0, gaveUp: 1 });
    expect(part.deliveries[0]?.givenUp).toBeGreaterThan(0);
    expect(part.deliveries[1]).toMatchObject({ heapLoads: null, leftLoads: null, share: 0 });
    for (const key of ['asked', 'need', 'share', 'collected', 'givenUp', 'chargedMinor', 'outstandingMinor'] as const) {
      const sum = (all: readonly Record<typeof key, number>[]) => all.reduce((total, row) => total + row[key], 0);
      expect([key, sum(part.deliveries), sum(part.holdings)]).toEqual([key, part.total[key], part.total[key]]);
    }
  });

  it('has credits that sum to nothing, at the start and at the end', async () => {
    const [part] = (await ask()).parts;
    const credits = part?.holdings.map(({ credits: [horse] }) => horse) ?? [];
    expect(credits.some((credit) => credit?.endMillionths !== 0)).toBe(true);
    const all = [...credits, part?.materials[0]?.lapsed];
    expect(all.reduce((sum, credit) => sum + (credit?.endMillionths ?? 0), 0)).toBe(0);
    expect(all.every((credit) => credit?.startMillionths === 0)).toBe(true);
    // What this season ended with, the next begins with.
    const later = await ask({ season: season + 1 });
    expect(later.parts).toEqual([]);
  });

  it('puts payments against the oldest charges, to the penny', async () => {
    const [, cattle] = await db().delivery.findMany({ where: { societyId: society.id }, orderBy: { id: 'asc' } });
    const [one, two] = holders.map(({ holdingId }) => holdingId) as [string, string];
    const before = (await ask()).parts[0]?.total;
    await post('charge', '2026-01-02', cattle?.id ?? '', [[one, 333n]]);
    await post('charge', '2026-01-03', cattle?.id ?? '', [[two, 1001n]]);
    await post('payment', '2026-01-04', null, [[one, -300n]]);
    const { parts } = await ask();
    expect((parts[0]?.total.chargedMinor ?? 0) - (before?.chargedMinor ?? 0)).toBe(1334);
    const [, second] = parts[0]?.deliveries ?? [];
    expect(second).toMatchObject({ chargedMinor: 1334, paidMinor: 300, outstandingMinor: 1034 });
  });

  it('comes as two tables with the same sums', async () => {
    const { parts } = await ask();
    const total = parts[0]?.total;
    for (const by of ['delivery', 'holding'] as const) {
      const { text, name } = await readSeasonCsv.run(society.secretary.caller, { season, by });
      expect(name).toBe(`season-${season}-by-${by}.csv`);
      const rows = parse(text, { bom: true, columns: true }) as Record<string, string>[];
      const sum = (column: string) => rows.reduce((all, row) => all + Number(row[column]), 0);
      expect([sum('asked'), sum('collected'), Math.round(sum('charged GBP') * 100)]).toEqual([
        total?.asked,
        total?.collected,
        total?.chargedMinor,
      ]);
      if (by === 'holding') {
        expect(rows.map(({ plots }) => plots)).toEqual(["'=3", '2', '10']);
        // A credit below nothing is a number, and no formula.
        expect(rows.map((row) => row['Horse manure: credit at the end']).join()).not.toContain("'");
      }
    }
  });
});

describe('the days of a season', () => {
  it('are those whose manure serves it, and no others', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 90_000 }), (days) => {
        const day = addDays(calendarDate('1901-01-01'), days);
        const { from, until } = seasonDays(seasonServed(day));
        expect(from <= day && day < until).toBe(true);
      }),
    );
  });
});

describe('who reads it, and with names', () => {
  const set = (key: string, value: string) =>
    db().societySetting.create({ data: { societyId: society.id, key, value, effectiveFrom: new Date('2020-01-01') } });

  it('is the society’s own to say', async () => {
    const member = holders[0]?.member.caller as TestMember['caller'];
    await expect(readSeason.run(member, { season })).rejects.toThrow(NotFound);
    expect(JSON.stringify(await ask())).not.toContain('Named');
    await set('seasonPaperFor', 'members');
    const shown = await readSeason.run(member, { season });
    expect(shown.parts).toHaveLength(1);
    expect(JSON.stringify(shown)).not.toContain('Named');
    await set('seasonPaperNames', 'names');
    expect((await readSeason.run(member, { season })).parts[0]?.holdings[1]).toMatchObject({ names: ['Named 2'] });
    const { text } = await readSeasonCsv.run(member, { season, by: 'holding' });
    expect(text).toContain('Named 2');
  });
});
