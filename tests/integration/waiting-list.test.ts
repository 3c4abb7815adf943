import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLate, leaveWaitingList } from '@/lib/usecases/deliveries/book-late';
import { bookLoads, withdrawBooking } from '@/lib/usecases/deliveries/book-loads';
import { giveUp, tickOff } from '@/lib/usecases/deliveries/collect';
import { closeDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { readQueue } from '@/lib/usecases/deliveries/read-queue';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
import { openLoad } from '../fixtures/open-load';
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

type Holder = TestMember & { holdingId: string };

let society: TestSociety;
let inTime: Holder[];
let late: Holder[];

beforeAll(async () => {
  society = await makeSociety();
  const holder = async (number: string): Promise<Holder> => {
    const member = await makeMember(society, { name: `Holder of ${number}` });
    return { ...member, holdingId: (await makePlot(society, number, [member.id])).holdingId };
  };
  inTime = [await holder('1'), await holder('2')];
  late = [await holder('3'), await holder('4')];
});

/** A load on which the first two ask for four each, closed; shared out on so many loads where they are given. */
async function closedLoad(heap: number | null, change: Record<string, string> = {}): Promise<string> {
  const deliveryId = await openLoad(society, { materialKey: 'wood-chip', densityGPerL: '300', ...change });
  for (const { caller, holdingId } of inTime)
    await done(bookLoads.run(caller, once({ deliveryId, holdingId, asked: '4' })));
  await done(closeDelivery.run(society.secretary.caller, once({ deliveryId })));
  if (heap === null) return deliveryId;
  await done(measureHeap.run(society.secretary.caller, once({ deliveryId, loads: String(heap) })));
  await done(confirmShareOut.run(society.secretary.caller, once({ deliveryId })));
  return deliveryId;
}

const ask = (who: Holder | undefined, deliveryId: string, asked: string) =>
  bookLate.run(who?.caller ?? society.secretary.caller, once({ deliveryId, holdingId: who?.holdingId, asked }));
const bookingOf = (deliveryId: string, { holdingId }: Holder) =>
  db().booking.findFirstOrThrow({ where: { deliveryId, holdingId } });
const sharesOf = async (deliveryId: string) =>
  Promise.all(
    [...inTime, ...late].map((who) => db().booking.findFirst({ where: { deliveryId, holdingId: who.holdingId } })),
  ).then((rows) => rows.map((row) => row?.share ?? null));
const finish = async (deliveryId: string) => {
  for (const who of [...inTime, ...late]) {
    const booking = await db().booking.findFirst({
      where: { deliveryId, holdingId: who.holdingId, withdrawnAt: null },
    });
    const left = (booking?.share ?? 0) - (booking?.collectedLoads ?? 0);
    if (booking && left > 0)
      await done(tickOff.run(who.caller, once({ deliveryId, bookingId: booking.id, loads: String(left) })));
  }
  await done(settleDelivery.run(society.secretary.caller, once({ deliveryId })));
};

describe('the waiting list', () => {
  it('gets what is left over, load by load as people came, and changes nobody’s credit', async () => {
    const deliveryId = await closedLoad(null);
    const [first, second] = late;
    await done(ask(first, deliveryId, '3'));
    await done(ask(second, deliveryId, '3'));
    await done(measureHeap.run(society.secretary.caller, once({ deliveryId, loads: '11' })));
    await done(confirmShareOut.run(society.secretary.caller, once({ deliveryId })));
    expect(await sharesOf(deliveryId)).toEqual([4, 4, 2, 1]);
    const { result } = await readQueue.run(society.secretary.caller, { deliveryId });
    expect(result?.canonical.split('\n').filter((line) => line.includes(':'))).toHaveLength(2);
    const lateRounds = result?.rounds.filter(({ stage }) => stage === 'late') ?? [];
    expect(lateRounds.map(({ served }) => served.length)).toEqual([2, 1]);
    await finish(deliveryId);
    expect(await db().creditEntry.count({ where: { deliveryId } })).toBe(0);
  });

  it('is open until the delivery is settled, and moves nobody’s share who was in time', async () => {
    const deliveryId = await closedLoad(9);
    expect(await sharesOf(deliveryId)).toEqual([4, 4, null, null]);
    const [first, second] = late;
    expect(await done(ask(first, deliveryId, '2'))).toMatchObject({ share: 1 });
    expect(await done(ask(second, deliveryId, '2'))).toMatchObject({ share: 0 });
    expect(await sharesOf(deliveryId)).toEqual([4, 4, 1, 0]);
    // A share given up goes to who waits, in order; those who gain are told.
    const [giver] = inTime;
    const { id: bookingId } = await bookingOf(deliveryId, giver as Holder);
    await done(tickOff.run(giver?.caller ?? society.secretary.caller, once({ deliveryId, bookingId, loads: '2' })));
    await done(giveUp.run(giver?.caller ?? society.secretary.caller, once({ deliveryId, bookingId })));
    expect(await sharesOf(deliveryId)).toEqual([2, 4, 2, 1]);
    const told = await db().mailMessage.findMany({
      where: { societyId: society.id, subject: { contains: 'more for you' } },
    });
    expect(told).toHaveLength(2);
    await finish(deliveryId);
    expect(await refusedWith(ask(first, deliveryId, '1'))).toEqual(['step-not-now']);
  });

  it('goes round load by load, and whoever has less by somebody behind them is told', async () => {
    const deliveryId = await closedLoad(11);
    const [first, second] = late;
    expect(await done(ask(first, deliveryId, '3'))).toMatchObject({ share: 3 });
    expect(await done(ask(second, deliveryId, '3'))).toMatchObject({ share: 1 });
    expect(await sharesOf(deliveryId)).toEqual([4, 4, 2, 1]);
    const where = { societyId: society.id, subject: { contains: 'less for you' } };
    expect(await db().mailMessage.count({ where })).toBe(1);
    await finish(deliveryId);
  });

  it('a smaller heap takes from it first, and a larger one gives', async () => {
    const deliveryId = await closedLoad(12);
    for (const who of late) await done(ask(who, deliveryId, '2'));
    expect(await sharesOf(deliveryId)).toEqual([4, 4, 2, 2]);
    const measure = (loads: string) => done(measureHeap.run(society.secretary.caller, once({ deliveryId, loads })));
    await measure('9');
    expect(await sharesOf(deliveryId)).toEqual([4, 4, 1, 0]);
    await measure('7');
    const [one = 0, other = 0, ...rest] = await sharesOf(deliveryId);
    expect([(one ?? 0) + (other ?? 0), ...rest]).toEqual([7, 0, 0]);
    await measure('12');
    expect(await sharesOf(deliveryId)).toEqual([4, 4, 2, 2]);
    await finish(deliveryId);
  });

  it('two who want the last load at once end as if they had come one after the other', async () => {
    const deliveryId = await closedLoad(9);
    const outcomes = await Promise.all(late.map((who) => ask(who, deliveryId, '1')));
    expect(outcomes.every(({ ok }) => ok)).toBe(true);
    const shares = (await sharesOf(deliveryId)).slice(2);
    expect(shares.toSorted()).toEqual([0, 1]);
    await finish(deliveryId);
  });

  it('is for who has no booking: one in time stands, one withdrawn in time may come late', async () => {
    const [booker] = inTime;
    const [waiter] = late;
    const deliveryId = await openLoad(society, { materialKey: 'wood-chip', densityGPerL: '300' });
    for (const who of [booker, waiter])
      await done(
        bookLoads.run(
          who?.caller ?? society.secretary.caller,
          once({ deliveryId, holdingId: who?.holdingId, asked: '2' }),
        ),
      );
    expect(await refusedWith(ask(waiter, deliveryId, '2'))).toEqual(['step-not-now']);
    await done(
      withdrawBooking.run(
        waiter?.caller ?? society.secretary.caller,
        once({ deliveryId, holdingId: waiter?.holdingId }),
      ),
    );
    await done(closeDelivery.run(society.secretary.caller, once({ deliveryId })));
    expect(await refusedWith(ask(booker, deliveryId, '3'))).toEqual(['booked-in-time']);
    await done(ask(waiter, deliveryId, '3'));
    expect(await bookingOf(deliveryId, waiter as Holder)).toMatchObject({
      lateAt: expect.any(Date),
      withdrawnAt: null,
    });
    // Whoever changes what they ask keeps their place.
    const { lateAt } = await bookingOf(deliveryId, waiter as Holder);
    await done(ask(waiter, deliveryId, '5'));
    expect(await bookingOf(deliveryId, waiter as Holder)).toMatchObject({ lateAt, asked: 5 });
    const { waiting } = await readDelivery.run(waiter?.caller ?? society.secretary.caller, { deliveryId });
    expect(waiting).toMatchObject({ mayJoin: true, bookingIds: [expect.any(String)] });
  });

  it('keeps to the limit, is left while nothing is shared to it, and not below a share', async () => {
    const deliveryId = await closedLoad(9, { capLoads: '4' });
    const [first, second] = late;
    expect(await refusedWith(ask(first, deliveryId, '5'))).toEqual(['above-cap']);
    expect(await refusedWith(ask(first, deliveryId, '0'))).toEqual(['asks-nothing']);
    await done(ask(first, deliveryId, '4'));
    await done(ask(second, deliveryId, '4'));
    const leave = (who: Holder | undefined) =>
      leaveWaitingList.run(who?.caller ?? society.secretary.caller, once({ deliveryId, holdingId: who?.holdingId }));
    expect(await refusedWith(leave(first))).toEqual(['late-has-share']);
    await done(leave(second));
    await done(
      giveUp.run(
        inTime[0]?.caller ?? society.secretary.caller,
        once({ deliveryId, bookingId: (await bookingOf(deliveryId, inTime[0] as Holder)).id }),
      ),
    );
    expect(await sharesOf(deliveryId)).toEqual([0, 4, 4, 0]);
    expect(await refusedWith(ask(first, deliveryId, '3'))).toEqual(['late-below-share']);
    await finish(deliveryId);
  });

  it('sent twice counts once, and the secretary may enter somebody on paper', async () => {
    const deliveryId = await closedLoad(9);
    const [first] = late;
    const sent = once({ deliveryId, holdingId: first?.holdingId, asked: '1' });
    await done(bookLate.run(society.secretary.caller, sent));
    await done(bookLate.run(society.secretary.caller, sent));
    expect(await bookingOf(deliveryId, first as Holder)).toMatchObject({ onPaper: true, share: 1 });
    expect(await db().auditRow.count({ where: { writeId: sent.writeId } })).toBe(1);
    await finish(deliveryId);
  });
});
