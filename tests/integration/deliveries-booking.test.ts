import { beforeAll, describe, expect, it } from 'vitest';
import { db } from '@/lib/data/db';
import { instantIn } from '@/lib/platform/clock';
import { bookLoads, offerToUnload, typeInBookings } from '@/lib/usecases/deliveries/book-loads';
import {
  callOffDelivery,
  changeDelivery,
  openDelivery,
  planDelivery,
  postponeDelivery,
} from '@/lib/usecases/deliveries/plan-delivery';
import { listDeliveries, readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import { previewShareOut } from '@/lib/usecases/deliveries/share-out';
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

const gateNote = 'padlock 4471';
let society: TestSociety;
let holder: TestMember;
let holdingId: string;
let onPaperId: string;

const openOne = async (facts: Record<string, string> = {}) => {
  const { caller } = society.secretary;
  const { deliveryId } = await done(planDelivery.run(caller, once(deliveryFacts({ gateNote, ...facts }))));
  await done(openDelivery.run(caller, once({ deliveryId })));
  return deliveryId;
};
const standing = (deliveryId: string) => db().booking.findMany({ where: { deliveryId, withdrawnAt: null } });

beforeAll(async () => {
  society = await makeSociety();
  holder = await makeMember(society, { name: 'Ivy', email: 'ivy@example.org' });
  holdingId = (await makePlot(society, '1', [holder.id], true)).holdingId;
  const byWord = await makeMember(society, { name: 'Bert', email: null, withAccount: false });
  onPaperId = (await makePlot(society, '2', [byWord.id], true)).holdingId;
});

describe('planning', () => {
  it('refuses days out of order, a density beyond belief, an unknown material and a closing that has passed', async () => {
    const planned = (facts: Record<string, string>) =>
      refusedWith(planDelivery.run(society.secretary.caller, once(deliveryFacts(facts))));
    expect(await planned({ collectByOn: '2026-01-01', arrivesOn: '2026-01-02' })).toEqual(['days-out-of-order']);
    expect(await planned({ densityGPerL: '3000' })).toEqual(['density-out-of-range']);
    expect(await planned({ materialKey: 'moon-dust' })).toEqual(['material-unknown']);
    expect(await planned({ closesAt: '2001-03-25T18:00' })).toEqual(['closing-in-the-past']);
    expect(await planned({ closesAt: '2027-02-31T18:00' })).toEqual(['input']);
    expect(await planned({ amount: '1e308' })).toEqual(['input']);
  });

  it('closes at an instant of the society’s own clock, summer, winter and the hour that is skipped', () => {
    const iso = (wall: string) => instantIn('Europe/London', wall).toISOString();
    expect(iso('2027-01-15T18:00')).toBe('2027-01-15T18:00:00.000Z');
    expect(iso('2027-07-15T18:00')).toBe('2027-07-15T17:00:00.000Z');
    expect(iso('2027-03-28T01:30')).toBe('2027-03-28T01:30:00.000Z');
    expect(iso('2027-10-31T01:30')).toBe('2027-10-31T00:30:00.000Z');
  });

  it('hides a planned delivery from members until it opens', async () => {
    const { caller } = society.secretary;
    const { deliveryId } = await done(planDelivery.run(caller, once(deliveryFacts())));
    const seen = async () => (await listDeliveries.run(holder.caller, {})).deliveries.map(({ id }) => id);
    expect(await seen()).not.toContain(deliveryId);
    await expect(readDelivery.run(holder.caller, { deliveryId })).rejects.toThrow();
    await done(openDelivery.run(caller, once({ deliveryId })));
    expect(await seen()).toContain(deliveryId);
  });
});

describe('changing a delivery that is open', () => {
  it('changes the facts, but not the load once somebody has booked of it', async () => {
    const deliveryId = await openOne();
    const changed = (facts: Record<string, string>) =>
      refusedWith(changeDelivery.run(society.secretary.caller, once({ deliveryId, ...deliveryFacts(facts) })));
    expect(await changed({ densityGPerL: '450' })).toEqual([]);
    await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '2', beds: [] })));
    expect(await changed({ densityGPerL: '500' })).toEqual(['booked-already']);
    const mails = () =>
      db().mailMessage.count({ where: { toAddress: 'ivy@example.org', subject: { contains: 'changed' } } });
    const before = await mails();
    expect(await changed({ densityGPerL: '450', dropPoint: 'by the tap' })).toEqual([]);
    expect(await mails()).toBe(before + 1);
    expect(await changed({ densityGPerL: '450', dropPoint: 'by the tap', supplier: 'a farm' })).toEqual([]);
    expect(await mails()).toBe(before + 1);
    expect(await changed({ densityGPerL: '450', capLoads: '1' })).toEqual(['booked-above-cap']);
    expect(await changed({ densityGPerL: '450', capLoads: '2' })).toEqual([]);
  });
});

describe('typing paper bookings in', () => {
  it('enters all rows or none, each fault beside its row, and books for whom the paper names', async () => {
    const deliveryId = await openOne({ capLoads: '5' });
    const enter = (mine: string, paper: string) =>
      typeInBookings.run(
        society.secretary.caller,
        once({
          deliveryId,
          rows: [
            { holdingId, asked: mine },
            { holdingId: onPaperId, asked: paper },
          ],
        }),
      );
    const faults = await enter('3', '９');
    expect(faults.ok ? [] : faults.refusals.map(({ field }) => field)).toEqual([`asked:${onPaperId}`]);
    expect(await refusedWith(enter('6', '2'))).toEqual(['above-cap']);
    expect(await standing(deliveryId)).toHaveLength(0);
    await done(enter('', '4'));
    expect((await standing(deliveryId)).map(({ asked, onPaper }) => ({ asked, onPaper }))).toEqual([
      { asked: 4, onPaper: true },
    ]);
    expect(await db().auditRow.count({ where: { forHoldingId: onPaperId } })).toBe(1);
  });
});

describe('putting off and calling off', () => {
  it('keeps bookings, tells everybody, and lets the gate note into neither mail nor book', async () => {
    const deliveryId = await openOne();
    await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '2', beds: [] })));
    await done(offerToUnload.run(holder.caller, once({ deliveryId, offers: 'yes' })));
    expect((await readDelivery.run(holder.caller, { deliveryId })).unloaders).toEqual(['Ivy']);
    const { arrivesOn, collectByOn, closesAt } = deliveryFacts({ arrivesOn: deliveryFacts().collectByOn });
    const { caller } = society.secretary;
    await done(postponeDelivery.run(caller, once({ deliveryId, arrivesOn, collectByOn, closesAt })));
    expect(await standing(deliveryId)).toHaveLength(1);
    expect(await refusedWith(callOffDelivery.run(caller, once({ deliveryId })))).toEqual(['input']);
    await done(callOffDelivery.run(caller, once({ deliveryId, sure: 'yes' })));
    const mails = await db().mailMessage.findMany({ where: { societyId: society.id, toAddress: 'ivy@example.org' } });
    expect(mails.filter(({ subject }) => /put off|called off/.test(subject))).toHaveLength(2);
    const { email } = await db().member.findUniqueOrThrow({ where: { id: society.secretary.id } });
    const others = await db().mailMessage.findMany({ where: { toAddress: email ?? '' } });
    expect(others.filter(({ subject }) => /put off|called off/.test(subject))).toHaveLength(2);
    const book = await db().auditRow.findMany({ where: { societyId: society.id } });
    expect(JSON.stringify([mails, book])).not.toContain('padlock');
    expect(await db().creditEntry.count({ where: { deliveryId } })).toBe(0);
    expect(
      await refusedWith(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '2', beds: [] }))),
    ).toEqual(['step-not-now']);
  });

  it('takes no booking once the lot is shown, though closing time says otherwise', async () => {
    const deliveryId = await openOne();
    await db().delivery.update({ where: { id: deliveryId }, data: { closesAt: new Date(Date.now() - 1) } });
    await done(previewShareOut.run(society.secretary.caller, once({ deliveryId })));
    await db().delivery.update({ where: { id: deliveryId }, data: { closesAt: new Date(Date.now() + 60_000) } });
    expect(
      await refusedWith(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '2', beds: [] }))),
    ).toEqual(['booking-closed']);
  });
});
