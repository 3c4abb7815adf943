import { beforeAll, describe, expect, it } from 'vitest';
import { brokenConstraint, db } from '@/lib/data/db';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { holdDelivery, releaseDelivery } from '@/lib/usecases/deliveries/hold-delivery';
import { callOffDelivery, closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { readQueue } from '@/lib/usecases/deliveries/read-queue';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
import { readWeek } from '@/lib/usecases/week/read-week';
import type { Caller } from '@/lib/usecases/operation';
import { NotFound } from '@/lib/usecases/refusal';
import { endTest, sowTest, startTest, takeBackTest } from '@/lib/usecases/residue/keep-tests';
import { readDeliveryTests, readOwnTests, readTest } from '@/lib/usecases/residue/read-tests';
import { recordReading } from '@/lib/usecases/residue/record-reading';
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
const ago = (days: number) => addDays(today, -days);

let society: TestSociety;
let secretary: Caller;
let holder: TestMember;
let neighbour: TestMember;
let holdingId: string;

beforeAll(async () => {
  society = await makeSociety();
  secretary = society.secretary.caller;
  holder = await makeMember(society, { email: 'holder@example.org' });
  neighbour = await makeMember(society, { email: 'neighbour@example.org' });
  ({ holdingId } = await makePlot(society, 'A1', [holder.id]));
  await makePlot(society, 'A2', [neighbour.id]);
});

const six = {
  name: 'Stable manure',
  manureParts: '1',
  mixParts: '1',
  testPots: '3',
  controlPots: '3',
  seedsAPot: '3',
};
const start = async (caller: Caller, given: Record<string, string> = {}) =>
  (await done(startTest.run(caller, once({ ...six, sownOn: ago(21), ...given })))).testId;

type Shown = { up?: string; distorted?: string; trueLeaves?: string };
/** The lines of all six pots: sound, with all their leaves, but for what is said. */
const lines = (manure: Shown = {}, plain: Shown = {}) =>
  ['manure', 'plain'].flatMap((word) =>
    [1, 2, 3].map((nth) => ({
      potId: `${word}-${nth}`,
      up: '3',
      distorted: '0',
      trueLeaves: '3',
      ...(word === 'manure' ? manure : plain),
    })),
  );
const read = (caller: Caller, testId: string, on: string, pots: object[], replaces?: string) =>
  recordReading.run(caller, once({ testId, on, pots, ...(replaces ? { replaces } : {}) }));
const shown = async (caller: Caller, testId: string) => (await readTest.run(caller, { testId })).test;

async function opened(given: Record<string, string> = {}): Promise<string> {
  const { deliveryId } = await done(planDelivery.run(secretary, once(deliveryFacts(given))));
  await done(openDelivery.run(secretary, once({ deliveryId })));
  await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '3', beds: [] })));
  return deliveryId;
}

async function tipped(given: Record<string, string> = {}): Promise<string> {
  const deliveryId = await opened(given);
  await done(closeDelivery.run(secretary, once({ deliveryId })));
  await done(measureHeap.run(secretary, once({ deliveryId, loads: '9' })));
  return deliveryId;
}

const mailTo = async (toAddress: string, about: string) =>
  (await db().mailMessage.findMany({ where: { societyId: society.id, toAddress, subject: { contains: about } } })).map(
    ({ body }) => body,
  );
const book = (thingId: string) =>
  db().auditRow.findMany({ where: { societyId: society.id, thingId }, orderBy: [{ at: 'asc' }, { id: 'asc' }] });

describe('a test of one’s own manure', () => {
  it('is led from the pots to what they show, and says no more than was seen', async () => {
    const testId = await start(holder.caller, { sownOn: '' });
    expect((await shown(holder.caller, testId)).state.next).toBe('sow');
    expect(await refusedWith(read(holder.caller, testId, today, lines()))).toEqual(['not-sown-yet']);
    await done(sowTest.run(holder.caller, once({ testId, sownOn: ago(10) })));
    await done(sowTest.run(holder.caller, once({ testId, sownOn: ago(21) })));
    expect((await shown(holder.caller, testId)).state).toMatchObject({ next: 'read', dueOn: ago(14), lateDays: 14 });
    await done(read(holder.caller, testId, ago(13), lines({ up: '2', trueLeaves: '1' }, { trueLeaves: '1' })));
    expect(await refusedWith(sowTest.run(holder.caller, once({ testId, sownOn: ago(20) })))).toEqual(['sown-and-read']);
    expect((await shown(holder.caller, testId)).state).toMatchObject({ next: 'read', dueOn: ago(7), due: true });
    await done(read(holder.caller, testId, today, lines()));
    const { state, judged, isEnded } = await shown(holder.caller, testId);
    expect({ next: state.next, isEnded, ...judged }).toEqual({
      next: 'judged',
      isEnded: false,
      verdict: 'no-symptoms-seen',
      reasons: [{ code: 'only-what-was-in-the-pots' }],
    });
  });

  it('is seen and kept by nobody else, not even the secretary', async () => {
    const testId = await start(holder.caller, { name: 'From the farm at the ford' });
    await done(read(holder.caller, testId, today, lines({ distorted: '2' })));
    expect((await readOwnTests.run(holder.caller, {})).tests.map(({ id }) => id)).toContain(testId);
    for (const caller of [secretary, neighbour.caller]) {
      await expect(readTest.run(caller, { testId })).rejects.toThrow(NotFound);
      await expect(read(caller, testId, ago(1), lines())).rejects.toThrow(NotFound);
      await expect(endTest.run(caller, once({ testId }))).rejects.toThrow(NotFound);
      await expect(takeBackTest.run(caller, once({ testId, sure: 'yes' }))).rejects.toThrow(NotFound);
      expect((await readOwnTests.run(caller, {})).tests).toEqual([]);
    }
    // What it is called and what it showed stays out of the book, which the committee reads.
    const rows = JSON.stringify(await book(testId));
    expect(rows).toContain('"verb":"read"');
    expect(rows).not.toMatch(/ford|distorted/);
  });

  it('keeps a reading that is corrected, and takes nothing twice', async () => {
    const testId = await start(holder.caller);
    await done(read(holder.caller, testId, ago(7), lines({ distorted: '3' })));
    expect((await shown(holder.caller, testId)).judged.verdict).toBe('symptoms');
    expect(await refusedWith(read(holder.caller, testId, ago(7), lines()))).toEqual(['read-that-day-already']);
    await done(read(holder.caller, testId, ago(6), lines(), ago(7)));
    expect((await shown(holder.caller, testId)).record.readings.map(({ on }) => on)).toEqual([ago(6)]);
    expect(await refusedWith(read(holder.caller, testId, ago(5), lines(), ago(7)))).toEqual(['reading-not-there']);
    const { record } = await db().residueTest.findUniqueOrThrow({ where: { id: testId } });
    const { entered } = record as unknown as { entered: { on: string; replaces: string | null; byMemberId: string }[] };
    expect(entered.map(({ on, replaces, byMemberId }) => [on, replaces, byMemberId])).toEqual([
      [ago(7), null, holder.id],
      [ago(6), ago(7), holder.id],
    ]);
    expect((await book(testId)).map(({ verb }) => verb)).toEqual(['started', 'read', 'reading corrected']);
  });

  it('refuses what cannot be, beside its field', async () => {
    const testId = await start(holder.caller, { sownOn: ago(8) });
    const refused = async (pots: object[], on: string = today) => {
      const outcome = await read(holder.caller, testId, on, pots);
      return outcome.ok ? [] : outcome.refusals.map(({ code, field }) => [code, field]);
    };
    const one = (line: object) => [{ potId: 'manure-1', up: '', distorted: '', trueLeaves: '', ...line }];
    expect(await refused(lines(), addDays(today, 1))).toEqual([['read-in-the-future', 'on']]);
    expect(await refused(lines(), ago(9))).toEqual([['read-before-sown', 'on']]);
    expect(await refused(one({}))).toEqual([['no-pot-read', 'pots']]);
    expect(await refused([])).toEqual([['no-pot-read', 'pots']]);
    expect(await refused([...one({ up: '0' }), ...one({ up: '0' })])).toEqual([['pot-not-there', 'pots']]);
    expect(await refused([{ ...one({ up: '0' })[0], potId: 'manure-4' }])).toEqual([['pot-not-there', 'pots']]);
    expect(await refused(one({ up: '3' }))).toEqual([['pot-half-read', 'distorted:manure-1']]);
    expect(await refused(one({ up: '3', distorted: '0' }))).toEqual([['pot-half-read', 'trueLeaves:manure-1']]);
    expect(await refused(one({ up: '4', distorted: '0', trueLeaves: '0' }))).toEqual([
      ['more-up-than-seeds', 'up:manure-1'],
    ]);
    expect(await refused(one({ up: '1', distorted: '2', trueLeaves: '0' }))).toEqual([
      ['more-distorted-than-up', 'distorted:manure-1'],
    ]);
    expect(await refused(lines({ up: 'all' }))).toHaveLength(3);
    expect((await shown(holder.caller, testId)).record.readings).toEqual([]);
    // A pot where nothing is up has nothing more to show, and a pot left empty was not read.
    await done(read(holder.caller, testId, today, one({ up: '0' })));
    expect((await shown(holder.caller, testId)).record.readings[0]?.pots).toEqual([
      { potId: 'manure-1', up: 0, distorted: 0, trueLeaves: 0 },
    ]);
  });

  it('ends, and a slip is mended after the end; taken back it is gone from sight and not from the table', async () => {
    const testId = await start(holder.caller);
    await done(read(holder.caller, testId, ago(14), lines()));
    await done(endTest.run(holder.caller, once({ testId })));
    expect(await refusedWith(endTest.run(holder.caller, once({ testId })))).toEqual(['test-ended']);
    expect(await refusedWith(read(holder.caller, testId, today, lines()))).toEqual(['test-ended']);
    await done(read(holder.caller, testId, ago(14), lines({ up: '2' }), ago(14)));
    await done(takeBackTest.run(holder.caller, once({ testId, sure: 'yes' })));
    await expect(readTest.run(holder.caller, { testId })).rejects.toThrow(NotFound);
    expect(await db().residueTest.count({ where: { id: testId, retiredAt: { not: null } } })).toBe(1);
  });

  it('loses nothing when two readings are entered at the same moment', async () => {
    const testId = await start(holder.caller);
    const days = Array.from({ length: 12 }, (_, nth) => ago(nth + 1));
    await Promise.all(days.map((on) => done(read(holder.caller, testId, on, lines()))));
    expect((await shown(holder.caller, testId)).record.readings.map(({ on }) => on)).toEqual(days.toReversed());
    const twins = await Promise.all(
      ['a', 'b', 'c'].map(() => refusedWith(read(holder.caller, testId, today, lines()))),
    );
    expect(twins.toSorted((a, b) => a.length - b.length)).toEqual([
      [],
      ['read-that-day-already'],
      ['read-that-day-already'],
    ]);
  });
});

describe('a test of a delivery', () => {
  it('is seen by every member, and kept by whoever started it and the secretary', async () => {
    const deliveryId = await opened({ name: 'Tested load' });
    const testId = await start(holder.caller, { deliveryId });
    await done(read(secretary, testId, ago(13), lines()));
    await done(read(holder.caller, testId, ago(6), lines({ distorted: '1' })));
    await expect(read(neighbour.caller, testId, today, lines())).rejects.toThrow(NotFound);
    const { tests, delivery } = await readDeliveryTests.run(neighbour.caller, { deliveryId });
    expect(delivery).toEqual({ id: deliveryId, name: 'Tested load', state: 'open', held: null });
    expect(tests.map(({ id, keeps, judged }) => [id, keeps, judged.verdict])).toEqual([[testId, false, 'symptoms']]);
    expect((await readOwnTests.run(holder.caller, {})).tests.map(({ id }) => id)).not.toContain(testId);
    expect(JSON.stringify((await book(testId)).at(-1)?.after)).toContain('manure-1: 3 up, 1 distorted, 3 sets');
    expect((await readTest.run(neighbour.caller, { testId })).mayHold).toBe(false);
    expect((await readTest.run(secretary, { testId })).mayHold).toBe(true);
  });

  it('cannot be started of what is only planned, but by the secretary, nor of what was called off', async () => {
    const { deliveryId } = await done(planDelivery.run(secretary, once(deliveryFacts())));
    await expect(startTest.run(holder.caller, once({ ...six, deliveryId }))).rejects.toThrow(NotFound);
    const testId = await start(secretary, { deliveryId });
    await expect(readTest.run(holder.caller, { testId })).rejects.toThrow(NotFound);
    await done(callOffDelivery.run(secretary, once({ deliveryId, sure: 'yes' })));
    expect(await refusedWith(startTest.run(holder.caller, once({ ...six, deliveryId })))).toEqual(['step-not-now']);
  });

  it('stands in the week of whoever keeps it when its pots are due, and symptoms in the secretary’s', async () => {
    const due = async ({ caller }: { caller: Caller }, deliveryId: string) =>
      (await readWeek.run(caller, {})).due.filter((one) => 'deliveryId' in one && one.deliveryId === deliveryId);
    const residues = (all: Awaited<ReturnType<typeof due>>) =>
      all.map(({ code }) => code).filter((code) => ['pots', 'symptoms', 'held'].includes(code));
    const deliveryId = await opened();
    const early = await start(holder.caller, { deliveryId, sownOn: today });
    expect(residues(await due(holder, deliveryId))).toEqual([]);
    await done(takeBackTest.run(holder.caller, once({ testId: early, sure: 'yes' })));
    const testId = await start(holder.caller, { deliveryId, sownOn: ago(1) });
    expect(await due(holder, deliveryId)).toContainEqual({
      code: 'pots',
      testId,
      deliveryId,
      name: six.name,
      next: 'read',
      dueOn: addDays(today, 6),
      lateDays: 0,
    });
    expect(residues(await due(neighbour, deliveryId))).toEqual([]);
    expect(residues(await due(society.secretary, deliveryId))).toEqual(['pots']);
    await done(read(holder.caller, testId, today, lines({ distorted: '3' })));
    expect(residues(await due(society.secretary, deliveryId))).toEqual(['symptoms']);
    expect(residues(await due(holder, deliveryId))).toEqual([]);
    await done(holdDelivery.run(secretary, once({ deliveryId, reason: 'fern-like leaves' })));
    expect(residues(await due(society.secretary, deliveryId))).toEqual(['held']);
    expect(residues(await due(holder, deliveryId))).toEqual([]);
    await done(callOffDelivery.run(secretary, once({ deliveryId, sure: 'yes' })));
    expect(residues(await due(society.secretary, deliveryId))).toEqual([]);
  });
});

describe('a heap that is held', () => {
  it('is not shared out until it is released; who booked is told, and the book says why', async () => {
    const deliveryId = await tipped({ name: 'Doubted load' });
    const confirm = () => confirmShareOut.run(secretary, once({ deliveryId }));
    expect(await refusedWith(releaseDelivery.run(secretary, once({ deliveryId, reason: 'x' })))).toEqual(['not-held']);
    await done(holdDelivery.run(secretary, once({ deliveryId, reason: 'leaves like fern' })));
    expect(await refusedWith(holdDelivery.run(secretary, once({ deliveryId, reason: 'x' })))).toEqual(['held-already']);
    const outcome = await confirm();
    expect(outcome.ok ? null : outcome.refusals).toEqual([
      { code: 'delivery-held', numbers: { since: today, reason: 'leaves like fern' } },
    ]);
    const seen = await readDelivery.run(neighbour.caller, { deliveryId });
    expect(seen.delivery.held).toMatchObject({ reason: 'leaves like fern' });
    expect((await readQueue.run(neighbour.caller, { deliveryId })).delivery.held).not.toBeNull();
    expect((await mailTo('holder@example.org', 'Doubted load is held'))[0]).toContain('leaves like fern');
    expect(await mailTo('neighbour@example.org', 'Doubted load')).toHaveLength(1);
    await done(releaseDelivery.run(secretary, once({ deliveryId, reason: 'a second test is clean' })));
    expect(await mailTo('holder@example.org', 'Doubted load is released')).toHaveLength(1);
    expect((await readDelivery.run(holder.caller, { deliveryId })).delivery.held).toBeNull();
    const rows = (await book(deliveryId)).filter(({ verb }) => verb === 'held' || verb === 'released');
    expect(rows.map(({ verb, before, after }) => [verb, before, after])).toEqual([
      ['held', null, { reason: 'leaves like fern' }],
      [
        'released',
        { reason: 'leaves like fern', since: expect.stringMatching(/^\d{4}-/) },
        { reason: 'a second test is clean' },
      ],
    ]);
    await done(confirm());
    expect(await refusedWith(holdDelivery.run(secretary, once({ deliveryId, reason: 'too late' })))).toEqual([
      'step-not-now',
    ]);
  });

  it('is refused by the database too, whichever way round it is written', async () => {
    const held = await tipped({ materialKey: 'cattle-manure', densityGPerL: '750' });
    await done(holdDelivery.run(secretary, once({ deliveryId: held, reason: 'doubt' })));
    for (const state of ['shared', 'collecting', 'settled'] as const)
      await expect(db().delivery.update({ where: { id: held }, data: { state } })).rejects.toSatisfy(
        (error) => brokenConstraint(error) === 'delivery_held',
      );
    await done(releaseDelivery.run(secretary, once({ deliveryId: held, reason: 'no more doubt' })));
    await done(confirmShareOut.run(secretary, once({ deliveryId: held })));
    await expect(
      db().delivery.update({ where: { id: held }, data: { heldAt: new Date(), heldReason: 'late' } }),
    ).rejects.toSatisfy((error) => brokenConstraint(error) === 'delivery_held');
  });

  it('is either held or shared out, however often both are asked for at the same moment', async () => {
    const materials = [
      ['mixed-manure', '600'],
      ['pig-manure', '750'],
      ['sheep-manure', '500'],
      ['goat-manure', '500'],
      ['rabbit-manure', '700'],
      ['duck-manure', '700'],
    ] as const;
    for (const [nth, [materialKey, densityGPerL]] of materials.entries()) {
      const deliveryId = await tipped({ materialKey, densityGPerL });
      const hold = () => refusedWith(holdDelivery.run(secretary, once({ deliveryId, reason: 'doubt' })));
      const confirm = () => refusedWith(confirmShareOut.run(secretary, once({ deliveryId })));
      const asked = nth % 2 ? [confirm(), hold(), confirm(), hold()] : [hold(), confirm(), hold(), confirm()];
      const answers = await Promise.all(asked);
      const { state, heldAt } = await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } });
      expect(answers.filter((codes) => codes.length === 0)).toHaveLength(1);
      expect(heldAt === null).toBe(state === 'shared');
      const shares = await db().booking.count({ where: { deliveryId, share: { not: null } } });
      expect(shares).toBe(heldAt === null ? 1 : 0);
    }
  });

  it('can be called off instead; only the secretary decides', async () => {
    const deliveryId = await opened();
    for (const { caller } of [holder, neighbour])
      for (const operation of [holdDelivery, releaseDelivery])
        await expect(operation.run(caller, once({ deliveryId, reason: 'r' }))).rejects.toThrow(NotFound);
    await done(holdDelivery.run(secretary, once({ deliveryId, reason: 'doubt' })));
    await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '4', beds: [] })));
    await done(callOffDelivery.run(secretary, once({ deliveryId, sure: 'yes' })));
    expect(await refusedWith(releaseDelivery.run(secretary, once({ deliveryId, reason: 'r' })))).toEqual([
      'step-not-now',
    ]);
  });
});
