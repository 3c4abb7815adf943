import { beforeEach, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { giveUp, tickOff, undoTick } from '@/lib/usecases/deliveries/collect';
import { recordLook } from '@/lib/usecases/deliveries/look-at-heap';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readCollecting } from '@/lib/usecases/deliveries/read-collecting';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
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
let secretary: TestMember;
let gate: TestMember;
let pair: TestMember;
let neighbour: TestMember;
let outsider: TestMember;
let deliveryId: string;
let bookingId: string;
let otherId: string;

// Ten loads for two: seven for plot H12, which two people hold, and three for plot H3.
beforeEach(async () => {
  society = await makeSociety();
  secretary = society.secretary;
  gate = await makeMember(society, { roles: ['gate_helper'] });
  const holder = await makeMember(society, { name: 'Holder of twelve' });
  pair = await makeMember(society);
  neighbour = await makeMember(society);
  outsider = await makeMember(society);
  const own = await makePlot(society, 'H12', [holder.id, pair.id], false);
  const other = await makePlot(society, 'H3', [neighbour.id], false);
  await makePlot(society, 'H4', [outsider.id], false);
  deliveryId = (await done(planDelivery.run(secretary.caller, once(deliveryFacts())))).deliveryId;
  await done(openDelivery.run(secretary.caller, once({ deliveryId })));
  const book = async (by: TestMember, holdingId: string, asked: string) =>
    (await done(bookLoads.run(by.caller, once({ deliveryId, holdingId, asked, beds: [] })))).bookingId;
  bookingId = await book(pair, own.holdingId, '7');
  otherId = await book(neighbour, other.holdingId, '3');
  await done(closeDelivery.run(secretary.caller, once({ deliveryId })));
  await done(measureHeap.run(secretary.caller, once({ deliveryId, loads: '12' })));
  await done(confirmShareOut.run(secretary.caller, once({ deliveryId })));
});

const tick = (by: TestMember, input: { writeId: string }) =>
  tickOff.run(by.caller, { deliveryId, bookingId, loads: '1', ...input });
const look = (by: TestMember, loads: number) => recordLook.run(by.caller, once({ deliveryId, loads: String(loads) }));
const read = (by: TestMember) => readCollecting.run(by.caller, { deliveryId });
const collected = async () => (await db().booking.findUniqueOrThrow({ where: { id: bookingId } })).collectedLoads;
const mails = (about: string) =>
  db().mailMessage.findMany({ where: { societyId: society.id, subject: { contains: about } } });

describe('two thumbs', () => {
  it('on the same form count one, however fast', async () => {
    const form = once({});
    const answers = await Promise.all([1, 2, 3, 4].map(() => tick(pair, form)));
    expect(answers.map(({ ok }) => ok)).toEqual([true, true, true, true]);
    expect(await collected()).toBe(1);
  });

  it('on two forms count two', async () => {
    await Promise.all([done(tick(pair, once({}))), done(tick(gate, once({})))]);
    expect(await collected()).toBe(2);
  });

  it('on the last load: one has it, the other is refused in words, and nothing is oversold', async () => {
    await done(tickOff.run(pair.caller, once({ deliveryId, bookingId, loads: '6' })));
    const answers = await Promise.all([pair, gate, secretary].map((by) => refusedWith(tick(by, once({})))));
    expect(answers.toSorted()).toEqual([[], ['above-share'], ['above-share']]);
    expect(await collected()).toBe(7);
  });

  it('ticking and giving up at once leaves a share that is collected or given up, never both', async () => {
    const gaveUp = giveUp.run(gate.caller, once({ deliveryId, bookingId }));
    const answers = await Promise.all([gaveUp, ...[1, 2, 3].map(() => tick(pair, once({})))]);
    const { share, collectedLoads } = await db().booking.findUniqueOrThrow({ where: { id: bookingId } });
    expect(answers[0]?.ok).toBe(true);
    expect(share).toBe(collectedLoads);
    expect(answers.slice(1).filter(({ ok }) => ok)).toHaveLength(collectedLoads);
  });
});

describe('the last tick', () => {
  it('says until when it can be undone, and is refused in words after that, but not to the secretary', async () => {
    await done(tick(pair, once({})));
    const [fresh] = (await read(pair)).rows;
    expect(fresh?.last).toMatchObject({ loads: 1, mayUndo: true });
    const at = (await db().collection.findFirstOrThrow({ where: { bookingId } })).at;
    expect(fresh?.last?.until.getTime()).toBe(at.getTime() + 600_000);
    await db().$executeRaw`ALTER TABLE "Collection" DISABLE TRIGGER collection_written_once`;
    await db()
      .$executeRaw`UPDATE "Collection" SET "at" = "at" - interval '10 minutes 1 second' WHERE "bookingId" = ${bookingId}::uuid`;
    await db().$executeRaw`ALTER TABLE "Collection" ENABLE TRIGGER collection_written_once`;
    expect((await read(pair)).rows[0]?.last?.mayUndo).toBe(false);
    for (const by of [pair, gate])
      expect(await refusedWith(undoTick.run(by.caller, once({ deliveryId, bookingId })))).toEqual(['too-late-to-undo']);
    expect((await read(secretary)).rows.find((row) => row.bookingId === bookingId)?.last?.mayUndo).toBe(true);
    await done(undoTick.run(secretary.caller, once({ deliveryId, bookingId })));
    expect(await collected()).toBe(0);
    expect((await read(pair)).rows[0]?.last).toBeNull();
  });
});

describe('what is left on the heap', () => {
  it('is told by the count and by the newest look, and by nobody’s eye before', async () => {
    expect((await read(pair)).estimate).toEqual({ byCount: 12, byEye: null, toCome: 10, mayRunShort: false });
    await done(look(pair, 11));
    await done(tick(pair, once({})));
    expect((await read(neighbour)).estimate).toEqual({ byCount: 11, byEye: 10, toCome: 9, mayRunShort: false });
    expect(await refusedWith(look(pair, 13))).toEqual(['look-above-heap']);
  });

  it('warns everybody once a look crosses, and mails the secretary and the gate helper once for it', async () => {
    await done(look(neighbour, 9));
    for (const by of [pair, neighbour, gate, secretary])
      expect((await read(by)).estimate).toMatchObject({ byEye: 9, toCome: 10, mayRunShort: true });
    const first = await mails('may run short');
    expect(first).toHaveLength(2);
    expect(first[0]?.body).toContain('about 9 loads left, and 10 are still to be fetched');
    // The same again, and fewer: it has crossed already.
    await done(look(pair, 9));
    await done(look(gate, 8));
    await done(tick(pair, once({})));
    expect(await mails('may run short')).toHaveLength(2);
    // More is seen, and then too few again: a look that crosses anew; whoever looked knows.
    await done(look(pair, 11));
    expect((await read(pair)).estimate?.mayRunShort).toBe(false);
    await done(look(gate, 5));
    expect(await mails('may run short')).toHaveLength(3);
  });

  it('is told once, though two look at the same moment', async () => {
    await Promise.all([done(look(pair, 9)), done(look(neighbour, 9))]);
    expect(await mails('may run short')).toHaveLength(2);
  });

  it('is what was measured, once the heap is measured again', async () => {
    await done(tick(pair, once({})));
    await done(look(pair, 4));
    await done(measureHeap.run(secretary.caller, once({ deliveryId, loads: '9' })));
    const { estimate } = await read(pair);
    expect(estimate).toEqual({ byCount: 8, byEye: 8, toCome: 8, mayRunShort: false });
  });

  it('is said by whoever collects, the gate and the secretary; by the secretary alone once it is settled', async () => {
    await expect(look(outsider, 9)).rejects.toThrow();
    await done(look(gate, 12));
    for (const id of [bookingId, otherId])
      await done(giveUp.run(secretary.caller, once({ deliveryId, bookingId: id })));
    await done(settleDelivery.run(secretary.caller, once({ deliveryId })));
    for (const by of [pair, gate]) await expect(look(by, 3)).rejects.toThrow();
    await done(look(secretary, 3));
    expect(await mails('may run short')).toHaveLength(0);
  });
});

describe('the gate’s list', () => {
  it('shows everybody’s share to the gate helper, a holder their own, one without a share nothing', async () => {
    expect((await read(gate)).rows.map(({ plots }) => plots[0]).toSorted()).toEqual(['H12', 'H3']);
    expect((await read(neighbour)).rows).toMatchObject([{ plots: ['H3'], share: 3, collected: 0, isMine: true }]);
    expect((await read(outsider)).rows).toEqual([]);
    expect((await read(outsider)).mayLook).toBe(false);
  });
});
