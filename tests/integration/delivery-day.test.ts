import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLoads, typeInBookings, withdrawBooking } from '@/lib/usecases/deliveries/book-loads';
import { enterBeyond, giveUp, tickOff, undoTick } from '@/lib/usecases/deliveries/collect';
import {
  callOffDelivery,
  closeDelivery,
  openDelivery,
  planDelivery,
  postponeDelivery,
} from '@/lib/usecases/deliveries/plan-delivery';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { readQueue } from '@/lib/usecases/deliveries/read-queue';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap, previewShareOut } from '@/lib/usecases/deliveries/share-out';
import { handOver } from '@/lib/usecases/members/offices';
import {
  deliveryFacts,
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  refusedWith,
  type TestMember,
  type TestSociety,
} from '../fixtures/society';

type Claimant = { holder: TestMember; holdingId: string; onPaper: boolean };

let society: TestSociety;
let claimants: Claimant[];
let secretary: TestMember;

const shareRows = (deliveryId: string) => db().booking.findMany({ where: { deliveryId }, orderBy: { id: 'asc' } });
const openOne = async (facts: Record<string, string> = {}) => {
  const { deliveryId } = await done(planDelivery.run(secretary.caller, once(deliveryFacts(facts))));
  await done(openDelivery.run(secretary.caller, once({ deliveryId })));
  return deliveryId;
};

beforeAll(async () => {
  society = await makeSociety();
  secretary = society.secretary;
  claimants = [];
  for (let nth = 1; nth <= 38; nth++) {
    const onPaper = nth > 27;
    const holder = await makeMember(society, {
      name: `Holder ${nth}`,
      email: onPaper ? null : `h${nth}@example.org`,
      withAccount: !onPaper,
    });
    const plot = await makePlot(society, `P${nth}`, [holder.id], nth % 4 !== 0);
    if (nth % 4 !== 0) await makeBed(society, plot);
    claimants.push({ holder, holdingId: plot.holdingId, onPaper });
  }
});

describe('the bad day: postponed, a third light, an over-taker, a no-show, a new secretary', () => {
  it('ends with loads and credits that add up', async () => {
    const deliveryId = await openOne();
    for (const [nth, { holder, holdingId }] of claimants.filter(({ onPaper }) => !onPaper).entries())
      await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: String(2 + (nth % 5)), beds: [] })));
    const rows = claimants
      .filter(({ onPaper }) => onPaper)
      .map(({ holdingId }, nth) => ({ holdingId, asked: String(3 + (nth % 4)) }));
    expect((await done(typeInBookings.run(secretary.caller, once({ deliveryId, rows })))).count).toBe(11);
    await done(closeDelivery.run(secretary.caller, once({ deliveryId })));
    const later = deliveryFacts();
    await done(
      postponeDelivery.run(
        secretary.caller,
        once({ deliveryId, arrivesOn: later.collectByOn, collectByOn: later.collectByOn, closesAt: later.closesAt }),
      ),
    );
    expect(await shareRows(deliveryId)).toHaveLength(38);

    await done(previewShareOut.run(secretary.caller, once({ deliveryId })));
    await done(measureHeap.run(secretary.caller, once({ deliveryId, loads: '80' })));
    await done(confirmShareOut.run(secretary.caller, once({ deliveryId })));
    expect(await refusedWith(confirmShareOut.run(secretary.caller, once({ deliveryId })))).toEqual([
      'confirmed-already',
    ]);
    const shared = await shareRows(deliveryId);
    expect(shared.reduce((sum, { share }) => sum + (share ?? 0), 0)).toBe(80);

    // A new secretary takes over in the middle.
    const successor = await makeMember(society, { name: 'The successor' });
    await done(handOver.run(secretary.caller, once({ memberId: successor.id })));
    await expect(settleDelivery.run(secretary.caller, once({ deliveryId }))).rejects.toThrow();
    secretary = successor;

    const [greedy, absent] = shared.filter(({ share }) => (share ?? 0) >= 2);
    if (!greedy || !absent) throw new Error('somebody has two loads');
    await done(tickOff.run(secretary.caller, once({ deliveryId, bookingId: greedy.id, loads: String(greedy.share) })));
    await done(
      enterBeyond.run(
        secretary.caller,
        once({ deliveryId, bookingId: greedy.id, loads: '2', reason: 'took two too many' }),
      ),
    );
    const after = await shareRows(deliveryId);
    expect(after.reduce((sum, { share }) => sum + (share ?? 0), 0)).toBe(80);
    expect(after.find(({ id }) => id === greedy.id)?.collectedLoads).toBe((greedy.share ?? 0) + 2);

    await done(giveUp.run(secretary.caller, once({ deliveryId, bookingId: absent.id })));
    for (let round = 0; round < 5; round++)
      for (const { id, share, collectedLoads } of await shareRows(deliveryId))
        if ((share ?? 0) > collectedLoads)
          await done(
            tickOff.run(
              secretary.caller,
              once({ deliveryId, bookingId: id, loads: String((share ?? 0) - collectedLoads) }),
            ),
          );
    await done(settleDelivery.run(secretary.caller, once({ deliveryId })));
    expect(await refusedWith(settleDelivery.run(secretary.caller, once({ deliveryId })))).toEqual(['step-not-now']);

    const delivery = await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } });
    expect(delivery.collectedLoads).toBe(80);
    const { _sum } = await db().creditEntry.aggregate({ where: { deliveryId }, _sum: { changeMillionths: true } });
    expect(_sum.changeMillionths).toBe(0n);
    const owing = await db().creditEntry.findFirst({ where: { deliveryId, holdingId: greedy.holdingId } });
    expect(Number(owing?.changeMillionths)).toBeLessThan(-1_000_000);
    expect(
      await db().auditRow.count({
        where: { societyId: society.id, verb: 'booked', forHoldingId: { not: null }, actorRoles: { has: 'secretary' } },
      }),
    ).toBe(11);
  });

  it('manures the beds that loads were booked for', async () => {
    const [first] = claimants;
    const holding = await db().holding.findUniqueOrThrow({
      where: { id: first?.holdingId ?? '' },
      include: { tenancies: { include: { plot: { include: { beds: true } } } } },
    });
    const bed = holding.tenancies[0]?.plot.beds[0];
    const deliveryId = await openOne();
    await done(
      bookLoads.run(
        first?.holder.caller ?? secretary.caller,
        once({ deliveryId, holdingId: holding.id, asked: '2', beds: bed?.id ?? '' }),
      ),
    );
    await done(closeDelivery.run(secretary.caller, once({ deliveryId })));
    await done(measureHeap.run(secretary.caller, once({ deliveryId, loads: '5' })));
    await done(confirmShareOut.run(secretary.caller, once({ deliveryId })));
    const [booking] = await shareRows(deliveryId);
    await done(
      tickOff.run(
        first?.holder.caller ?? secretary.caller,
        once({ deliveryId, bookingId: booking?.id ?? '', loads: '2' }),
      ),
    );
    await done(settleDelivery.run(secretary.caller, once({ deliveryId })));
    const works = await db().groundWork.findMany({ where: { deliveryId } });
    expect(works.map(({ widthCm, lengthCm }) => ({ widthCm, lengthCm }))).toEqual([{ widthCm: 600, lengthCm: 200 }]);
  });
});

describe('booking', () => {
  it('takes one claim a holding, changes it, withdraws it, and changes nothing when sent twice', async () => {
    const deliveryId = await openOne();
    const [{ holder, holdingId } = claimants[0] as Claimant] = claimants;
    const sent = once({ deliveryId, holdingId, asked: '4', beds: [] });
    await done(bookLoads.run(holder.caller, sent));
    await done(bookLoads.run(holder.caller, sent));
    await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '6', beds: [] })));
    expect((await shareRows(deliveryId)).map(({ asked }) => asked)).toEqual([6]);
    expect(await db().auditRow.count({ where: { writeId: sent.writeId } })).toBe(1);
    await done(withdrawBooking.run(holder.caller, once({ deliveryId, holdingId })));
    expect((await shareRows(deliveryId))[0]?.withdrawnAt).not.toBeNull();
    await done(callOffDelivery.run(secretary.caller, once({ deliveryId, sure: 'yes' })));
  });

  it('refuses nothing, too much, and whatever comes at or after the closing instant', async () => {
    const deliveryId = await openOne({ capLoads: '5' });
    const [{ holder, holdingId } = claimants[0] as Claimant] = claimants;
    const asking = (asked: string) =>
      refusedWith(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked, beds: [] })));
    expect(await asking('0')).toEqual(['asks-nothing']);
    expect(await asking('6')).toEqual(['above-cap']);
    for (const absurd of ['-1', '1e308', '２', '1.5', 'ten', '99999']) expect(await asking(absurd)).toEqual(['input']);
    await db().delivery.update({ where: { id: deliveryId }, data: { closesAt: new Date(Date.now() - 1) } });
    expect(await asking('3')).toEqual(['booking-closed']);
  });

  it('keeps the lot to itself until the first preview', async () => {
    const deliveryId = await openOne();
    const [{ holder, holdingId } = claimants[0] as Claimant] = claimants;
    await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '2', beds: [] })));
    const secret = (await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } })).lotBytesHex ?? 'none';
    const seen = JSON.stringify([
      await readDelivery.run(holder.caller, { deliveryId }),
      await readQueue.run(holder.caller, { deliveryId }),
    ]);
    expect(seen).not.toContain(secret);
    await done(closeDelivery.run(secretary.caller, once({ deliveryId })));
    await done(previewShareOut.run(secretary.caller, once({ deliveryId })));
    expect(JSON.stringify(await readQueue.run(holder.caller, { deliveryId }))).toContain(secret);
  });
});

describe('at the heap', () => {
  it('never lets a holder past the share, nor anybody past the heap, and undoes by a reversing row', async () => {
    const deliveryId = await openOne();
    const [first, second] = claimants;
    if (!first || !second) throw new Error('there are claimants');
    for (const { holder, holdingId } of [first, second])
      await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '3', beds: [] })));
    await done(closeDelivery.run(secretary.caller, once({ deliveryId })));
    await done(measureHeap.run(secretary.caller, once({ deliveryId, loads: '6' })));
    await done(confirmShareOut.run(secretary.caller, once({ deliveryId })));
    const mine = (await shareRows(deliveryId)).find(({ holdingId }) => holdingId === first.holdingId);
    const bookingId = mine?.id ?? '';
    expect(await refusedWith(tickOff.run(first.holder.caller, once({ deliveryId, bookingId, loads: '4' })))).toEqual([
      'above-share',
    ]);
    await done(tickOff.run(first.holder.caller, once({ deliveryId, bookingId, loads: '3' })));
    await done(undoTick.run(first.holder.caller, once({ deliveryId, bookingId })));
    await done(tickOff.run(first.holder.caller, once({ deliveryId, bookingId, loads: '2' })));
    expect(
      await refusedWith(enterBeyond.run(secretary.caller, once({ deliveryId, bookingId, loads: '5', reason: 'x' }))),
    ).toEqual(['above-heap']);
    expect(await refusedWith(measureHeap.run(secretary.caller, once({ deliveryId, loads: '1' })))).toEqual([
      'measure-below-collected',
    ]);
    await expect(tickOff.run(second.holder.caller, once({ deliveryId, bookingId, loads: '1' }))).rejects.toThrow();
    expect((await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } })).collectedLoads).toBe(2);
  });
});
