import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { measureHeap } from '@/lib/usecases/deliveries/share-out';
import { inProcess, startWorker } from '../fixtures/process';
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
import type { Task } from '../fixtures/worker';

const count = 100;
let society: TestSociety;
const holders: { member: TestMember; holdingId: string }[] = [];

beforeAll(async () => {
  society = await makeSociety();
  for (let nth = 0; nth < count; nth++) {
    const member = await makeMember(society);
    const { holdingId } = await makePlot(society, `P${nth}`, [member.id], false);
    holders.push({ member, holdingId });
  }
});

async function openOne(): Promise<string> {
  const { deliveryId } = await done(planDelivery.run(society.secretary.caller, once(deliveryFacts())));
  await done(openDelivery.run(society.secretary.caller, once({ deliveryId })));
  return deliveryId;
}

const booking = (deliveryId: string): Task[] =>
  holders.map(({ member, holdingId }) => ({
    operation: 'book',
    caller: member.caller,
    input: once({ deliveryId, holdingId, asked: '3', beds: [] }),
  }));

describe('two app processes on one database', () => {
  it('take 200 bookings, confirm once, and never tick off more than a share', async () => {
    const deliveryId = await openOne();
    const tasks = booking(deliveryId);
    // Both processes send the same hundred writes: half of the two hundred are doubles.
    const booked = (await Promise.all([inProcess(tasks), inProcess(tasks)])).flat();
    expect(booked.filter(({ ok }) => ok)).toHaveLength(2 * count);
    expect(await db().booking.count({ where: { deliveryId } })).toBe(count);
    expect(await db().auditRow.count({ where: { societyId: society.id, thing: 'booking' } })).toBe(count);

    const secretary = society.secretary.caller;
    await done(closeDelivery.run(secretary, once({ deliveryId })));
    await done(measureHeap.run(secretary, once({ deliveryId, loads: '120' })));
    const confirming = () =>
      Array.from(
        { length: 10 },
        (): Task => ({ operation: 'confirm', caller: secretary, input: once({ deliveryId }) }),
      );
    const confirmed = (await Promise.all([inProcess(confirming()), inProcess(confirming())])).flat();
    expect(confirmed.filter(({ ok }) => ok)).toHaveLength(1);
    expect(confirmed.filter(({ code }) => code === 'confirmed-already')).toHaveLength(19);

    const bookings = await db().booking.findMany({ where: { deliveryId } });
    expect(bookings.reduce((sum, { share }) => sum + (share ?? 0), 0)).toBe(120);
    const ticking = bookings.flatMap(({ id, holdingId }): Task[] => {
      const caller = holders.find((holder) => holder.holdingId === holdingId)?.member.caller ?? secretary;
      return [
        { operation: 'tick', caller, input: once({ deliveryId, bookingId: id, loads: '1' }) },
        { operation: 'tick', caller, input: once({ deliveryId, bookingId: id, loads: '1' }) },
      ];
    });
    const ticked = (await Promise.all([inProcess(ticking.slice(0, count)), inProcess(ticking.slice(count))])).flat();
    const delivery = await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } });
    expect(ticked.filter(({ ok }) => ok)).toHaveLength(delivery.collectedLoads);
    expect(delivery.collectedLoads).toBe(120);
    for (const { share, collectedLoads } of await db().booking.findMany({ where: { deliveryId } }))
      expect(collectedLoads).toBeLessThanOrEqual(share ?? 0);
  });

  it('lose nothing that was acknowledged when one of them is killed in the middle', async () => {
    const deliveryId = await openOne();
    const doomed = startWorker(booking(deliveryId));
    await expect.poll(() => doomed.answers.length, { timeout: 30_000, interval: 5 }).toBeGreaterThan(3);
    doomed.child.kill('SIGKILL');
    await doomed.ended;
    const acknowledged = doomed.answers.filter(({ ok }) => ok).map(({ at }) => holders[at]?.holdingId);
    const written = new Set((await db().booking.findMany({ where: { deliveryId } })).map(({ holdingId }) => holdingId));
    expect(acknowledged.filter((holdingId) => !written.has(holdingId ?? ''))).toEqual([]);
    // Every booking that stands has its line in the book, and the rest can be sent again.
    expect(
      await db().auditRow.count({
        where: {
          thing: 'booking',
          thingId: { in: (await db().booking.findMany({ where: { deliveryId } })).map(({ id }) => id) },
        },
      }),
    ).toBe(written.size);
    const again = await inProcess(booking(deliveryId));
    expect(again.every(({ ok }) => ok)).toBe(true);
    expect(await db().booking.count({ where: { deliveryId } })).toBe(count);
  });
});
