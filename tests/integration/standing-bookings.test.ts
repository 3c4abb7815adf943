import { beforeEach, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { bookLoads, withdrawBooking } from '@/lib/usecases/deliveries/book-loads';
import { openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readDelivery, readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import {
  changeStanding,
  endStanding,
  readStandingBookings,
  startStanding,
} from '@/lib/usecases/deliveries/standing-bookings';
import { endTenancy } from '@/lib/usecases/plots/keep-tenancies';
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

let society: TestSociety;
let holder: TestMember;
let partner: TestMember;
let plot: Awaited<ReturnType<typeof makePlot>>;

beforeEach(async () => {
  society = await makeSociety();
  holder = await makeMember(society, { name: 'Ada' });
  partner = await makeMember(society, { name: 'Zeb' });
  plot = await makePlot(society, 'S1', [holder.id, partner.id]);
  for (const nth of [0, 1, 2]) await makeBed(society, plot, nth);
});

const secretary = () => society.secretary.caller;
const start = (change: object = {}, who = holder) =>
  startStanding.run(who.caller, once({ holdingId: plot.holdingId, serves: 'manure', when: 'always', ...change }));
const plan = async (change: Record<string, string> = {}) =>
  (await done(planDelivery.run(secretary(), once(deliveryFacts(change))))).deliveryId;
const open = async (change: Record<string, string> = {}) => {
  const deliveryId = await plan(change);
  return done(openDelivery.run(secretary(), once({ deliveryId })));
};
const bookings = (deliveryId: string) => db().booking.findMany({ where: { deliveryId, withdrawnAt: null } });

describe('a standing booking', () => {
  it('books what the due ground needs when a delivery opens, and tells the holders', async () => {
    await done(start());
    const { deliveryId, standing } = await open();
    expect(standing).toBe(1);
    const { claims } = await readDelivery.run(holder.caller, { deliveryId });
    const need = claims[0]?.need?.loads ?? 0;
    expect(need).toBeGreaterThan(1);
    expect(claims[0]?.booking).toMatchObject({
      asked: need,
      fromStanding: true,
      bedIds: [expect.any(String), expect.any(String), expect.any(String)],
    });
    const mails = await db().mailMessage.findMany({
      where: { societyId: society.id, subject: { contains: 'booked for you' } },
    });
    expect(mails).toHaveLength(2);
    const [read] = await readStandingBookings.run(holder.caller, {});
    expect(read?.standing).toMatchObject([{ serves: 'manure', last: { asked: need } }]);
  });

  it('asks within its own limit and the delivery’s, and is counted for the secretary before', async () => {
    await done(start({ mostLoads: '3' }));
    const deliveryId = await plan({ capLoads: '2' });
    expect((await readGateList.run(secretary(), { deliveryId })).standing).toEqual([2]);
    await done(openDelivery.run(secretary(), once({ deliveryId })));
    expect(await bookings(deliveryId)).toMatchObject([{ asked: 2 }]);
  });

  it('is changed or withdrawn for one delivery like any other, and stands for the next', async () => {
    await done(start());
    const { deliveryId } = await open();
    await done(bookLoads.run(partner.caller, once({ deliveryId, holdingId: plot.holdingId, asked: '1' })));
    expect(await bookings(deliveryId)).toMatchObject([{ asked: 1, fromStanding: false }]);
    await done(withdrawBooking.run(holder.caller, once({ deliveryId, holdingId: plot.holdingId })));
    expect(await bookings(deliveryId)).toEqual([]);
    expect((await open({ materialKey: 'cattle-manure', densityGPerL: '750' })).standing).toBe(1);
  });

  it('keeps to autumn where it says so, and to its material', async () => {
    await done(start({ when: 'autumn' }));
    const year = new Date().getFullYear() + 1;
    const spring = { arrivesOn: `${year}-03-10`, collectByOn: `${year}-03-20`, closesAt: `${year}-03-01T18:00` };
    const autumn = { arrivesOn: `${year}-10-10`, collectByOn: `${year}-10-20`, closesAt: `${year}-10-01T18:00` };
    expect((await open(spring)).standing).toBe(0);
    expect((await open({ ...autumn, materialKey: 'wood-chip', densityGPerL: '300' })).standing).toBe(0);
    expect((await open(autumn)).standing).toBe(1);
  });

  it('books nothing where nothing is needed', async () => {
    await done(start());
    await db().groundWork.create({
      data: {
        ...{ societyId: society.id, frameId: plot.frameId, xCm: 0, yCm: 0, widthCm: 2000, lengthCm: 2000 },
        ...{ kind: 'manured', season: new Date().getFullYear() + 1, materialKey: 'horse-manure' },
      },
    });
    const { deliveryId, standing } = await open();
    expect(standing).toBe(0);
    expect(await bookings(deliveryId)).toEqual([]);
  });

  it('stands once of a kind, however many start it at once; is changed and ended by either holder', async () => {
    const outcomes = await Promise.all([start(), start({}, partner)]);
    expect(outcomes.filter(({ ok }) => ok)).toHaveLength(1);
    expect(await refusedWith(start())).toEqual(['stands-already']);
    const { id: standingId } = await db().standingBooking.findFirstOrThrow({ where: { holdingId: plot.holdingId } });
    await done(changeStanding.run(partner.caller, once({ standingId, when: 'always', mostLoads: '1' })));
    const { deliveryId } = await open();
    expect(await bookings(deliveryId)).toMatchObject([{ asked: 1 }]);
    await done(endStanding.run(partner.caller, once({ standingId })));
    expect((await open({ materialKey: 'cattle-manure', densityGPerL: '750' })).standing).toBe(0);
    await done(start());
  });

  it('ends with the holding, and is nobody’s of whoever takes the ground over', async () => {
    await done(start());
    const from = new Date().toISOString().slice(0, 10);
    await done(endTenancy.run(secretary(), once({ plotId: plot.plotId, from, sure: 'yes' })));
    expect(await db().standingBooking.count({ where: { holdingId: plot.holdingId, endedAt: null } })).toBe(0);
    expect(
      await db().auditRow.count({ where: { societyId: society.id, thing: 'standing booking', verb: 'ended' } }),
    ).toBe(1);
    expect((await open()).standing).toBe(0);
    expect(await readStandingBookings.run(holder.caller, {})).toEqual([]);
  });
});
