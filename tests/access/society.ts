import { randomUUID } from 'node:crypto';
import { db } from '@/lib/data/db';
import { toDbDay } from '@/lib/data/day';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { todayIn } from '@/lib/platform/clock';
import { bookLoads, offerToUnload } from '@/lib/usecases/deliveries/book-loads';
import { enterBeyond, tickOff } from '@/lib/usecases/deliveries/collect';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
import { recordPlanting } from '@/lib/usecases/ground/keep-plantings';
import { inviteMember } from '@/lib/usecases/members/invite-member';
import { changeOwnDetails } from '@/lib/usecases/members/keep-members';
import type { Caller } from '@/lib/usecases/operation';
import { deliveryFacts, done, makeMember, makePlot, makeSociety, once, type TestMember } from '../fixtures/society';
import type { Ids, Person } from './row';

export type FilledSociety = {
  readonly id: string;
  readonly slug: string;
  /** Stands in every text of the society, and nowhere else. */
  readonly tag: string;
  readonly ids: Ids;
  readonly callers: Readonly<Record<Person, Caller>>;
};

type Made = Awaited<ReturnType<typeof makeSociety>>;
type Plot = Awaited<ReturnType<typeof makePlot>>;
type Word = (what: string) => string;
type Ground = Awaited<ReturnType<typeof makeGround>>;
type Members = Awaited<ReturnType<typeof makeMembers>>;

/** Make a society with something of everything, each text of it marked with the society's tag. */
export async function fillSociety(): Promise<FilledSociety> {
  const tag = `zq${randomUUID().slice(0, 8)}`;
  const word: Word = (what) => `${tag} ${what}`;
  const society = await makeSociety(tag);
  await db().site.update({ where: { id: society.siteId }, data: { name: word('site') } });
  const members = await makeMembers(society, word);
  const ground = await makeGround(society, word, members);
  const deliveries = await makeDeliveries(society, word, members, ground);
  const { secretary, chair, treasurer, gateHelper, holder, neighbour } = members;
  return {
    id: society.id,
    slug: society.slug,
    tag,
    ids: {
      ...ground.ids,
      ...deliveries,
      siteId: society.siteId,
      holderId: holder.id,
      spareMemberId: members.spare.id,
      leftMemberId: members.left.id,
      noAccountId: members.noAccount.id,
      invitedId: members.invited.id,
    },
    callers: {
      secretary: secretary.caller,
      chair: chair.caller,
      treasurer: treasurer.caller,
      gate_helper: gateHelper.caller,
      holder: holder.caller,
      neighbour: neighbour.caller,
    },
  };
}

async function makeMembers(society: Made, word: Word) {
  const make = async (name: string, given: Partial<Parameters<typeof makeMember>[1]> = {}) => {
    const email = `${word(name).replaceAll(' ', '-')}-mail@example.org`;
    const member = await makeMember(society, { name: word(name), email, ...given });
    // The address of a sign-in is another thing than the member's own.
    const account = { email: `${word(name).replaceAll(' ', '-')}-sign-in@example.org`, passwordHash: word('hash') };
    await db().account.updateMany({ where: { id: member.caller.accountId }, data: account });
    return member;
  };
  const members = {
    secretary: society.secretary,
    chair: await make('chair', { roles: ['chair'] }),
    treasurer: await make('treasurer', { roles: ['treasurer'] }),
    gateHelper: await make('gate helper', { roles: ['gate_helper'] }),
    holder: await make('holder'),
    neighbour: await make('neighbour'),
    spare: await make('spare'),
    former: await make('former holder'),
    left: await make('left'),
    noAccount: await make('without account', { withAccount: false }),
    invited: await make('invited', { withAccount: false }),
  };
  const { secretary, holder, neighbour, former, left, invited } = members;
  for (const [name, { caller }] of Object.entries({ secretary, holder, neighbour })) {
    const contact = { phone: word(`${name} phone`), postal: word(`${name} postal`) };
    const email = `${word(name).replaceAll(' ', '-')}-mail@example.org`;
    await done(changeOwnDetails.run(caller, once({ name: word(name), email, ...contact, units: 'metric' })));
  }
  await done(inviteMember.run(secretary.caller, once({ memberId: invited.id })));
  const today = todayIn('Europe/London');
  const gone = { id: { in: [former.id, left.id] } };
  await db().member.updateMany({ where: gone, data: { leftOn: toDbDay(addDays(today, -30)) } });
  return members;
}

// The holder's plot with two beds that touch, a spare plot beside it, and the neighbour's beyond.
async function makeGround(society: Made, word: Word, { holder, neighbour, former }: Members) {
  const plot = await makePlot(society, word('A'), [holder.id]);
  const spare = await makePlot(society, word('B'), []);
  const other = await makePlot(society, word('C'), [neighbour.id]);
  await db().frame.update({ where: { id: spare.frameId }, data: { originXCm: 800 } });
  await db().frame.update({ where: { id: other.frameId }, data: { originXCm: 3000 } });
  const bedName = word('bed 1');
  const bedId = await makeBed(society, plot, bedName, 60);
  const nextBedId = await makeBed(society, plot, word('bed 2'), 260);
  const otherBedId = await makeBed(society, other, word('bed 3'), 60);
  await heldBefore(society, plot, bedId, word, former);
  const crop = await db().societyCrop.create({
    data: {
      societyId: society.id,
      key: word('crop key'),
      name: word('crop'),
      family: word('family'),
      cropGroup: 'roots',
      hostGroups: [],
      life: 'annual',
      takesManure: false,
    },
  });
  const record = ({ caller }: TestMember, bed: string, whose: string) =>
    done(
      recordPlanting.run(
        caller,
        once({
          bedId: bed,
          cropKey: crop.key,
          season: String(thisYear()),
          variety: word(`${whose} variety`),
          notes: word(`${whose} notes`),
        }),
      ),
    );
  const { plantingId } = await record(holder, bedId, 'holder');
  await record(neighbour, otherBedId, 'neighbour');
  const { id: workId } = await db().groundWork.create({
    data: {
      societyId: society.id,
      frameId: plot.frameId,
      xCm: 60,
      yCm: 60,
      widthCm: 600,
      lengthCm: 200,
      season: thisYear() - 2,
    },
  });
  const ids = { plotId: plot.plotId, sparePlotId: spare.plotId, bedId, nextBedId, plantingId, workId, bedName };
  return { ids: { ...ids, holdingId: plot.holdingId }, otherHoldingId: other.holdingId };
}

export function thisYear(): number {
  return Number(todayIn('Europe/London').slice(0, 4));
}

async function makeBed(society: Made, { plotId, frameId }: Plot, name: string, yCm: number): Promise<string> {
  const footprint = { xCm: 60, yCm, widthCm: 600, lengthCm: 200 };
  const data = { societyId: society.id, plotId, frameId, ...footprint, name, fromOn: new Date('2019-10-01') };
  return (await db().bed.create({ data, select: { id: true } })).id;
}

// Somebody held the plot before, and left notes on its ground.
async function heldBefore(society: Made, plot: Plot, bedId: string, word: Word, former: TestMember): Promise<void> {
  const taken = new Date('2022-01-01');
  const now = { societyId: society.id, holdingId: plot.holdingId };
  await db().tenancy.updateMany({ where: now, data: { fromOn: taken } });
  await db().holdingMember.updateMany({ where: now, data: { fromOn: taken } });
  const holding = await db().holding.create({ data: { societyId: society.id, endedOn: taken } });
  const until = { societyId: society.id, holdingId: holding.id, fromOn: new Date('2019-10-01'), untilOn: taken };
  await db().holdingMember.create({ data: { ...until, memberId: former.id } });
  await db().tenancy.create({ data: { ...until, plotId: plot.plotId } });
  await db().planting.create({
    data: {
      societyId: society.id,
      frameId: plot.frameId,
      bedId,
      holdingId: holding.id,
      cropKey: 'kale',
      variety: word('former variety'),
      notes: word('former notes'),
      xCm: 60,
      yCm: 60,
      widthCm: 600,
      lengthCm: 200,
      firstSeason: 2021,
      lastSeason: 2021,
    },
  });
}

/** A delivery in each state, of materials that do not wait for each other. */
async function makeDeliveries(society: Made, word: Word, { holder, neighbour, ...members }: Members, ground: Ground) {
  const secretary = members.secretary.caller;
  const plan = async (state: string, materialKey: string, densityGPerL: string) => {
    const texts = {
      supplier: word(`${state} supplier`),
      dropPoint: word('drop point'),
      gateNote: word(`${state} gate`),
    };
    const facts = { name: word(state), materialKey, densityGPerL, keyHolderId: neighbour.id, ...texts };
    const { deliveryId } = await done(planDelivery.run(secretary, once(deliveryFacts(facts))));
    return deliveryId;
  };
  const open = async (...given: Parameters<typeof plan>) => {
    const deliveryId = await plan(...given);
    await done(openDelivery.run(secretary, once({ deliveryId })));
    const { bedId, holdingId } = ground.ids;
    const own = once({ deliveryId, holdingId, asked: '3', beds: [bedId] });
    const { bookingId } = await done(bookLoads.run(holder.caller, own));
    const others = once({ deliveryId, holdingId: ground.otherHoldingId, asked: '2', beds: [] });
    const { bookingId: otherBookingId } = await done(bookLoads.run(neighbour.caller, others));
    return { deliveryId, bookingId, otherBookingId };
  };
  const close = async (...given: Parameters<typeof plan>) => {
    const made = await open(...given);
    await done(closeDelivery.run(secretary, once({ deliveryId: made.deliveryId })));
    return made;
  };
  const tip = async (...given: Parameters<typeof plan>) => {
    const made = await close(...given);
    await done(measureHeap.run(secretary, once({ deliveryId: made.deliveryId, loads: '9' })));
    return made;
  };
  const share = async (...given: Parameters<typeof plan>) => {
    const made = await tip(...given);
    await done(confirmShareOut.run(secretary, once({ deliveryId: made.deliveryId })));
    return made;
  };
  const opened = await open('open', 'horse-manure', '400');
  await done(offerToUnload.run(neighbour.caller, once({ deliveryId: opened.deliveryId, offers: 'yes' })));
  const { deliveryId: sharedId, bookingId } = await share('shared', 'horse-manure', '400');
  await done(tickOff.run(holder.caller, once({ deliveryId: sharedId, bookingId, loads: '1' })));
  const collected = await share('collected', 'green-compost', '500');
  const tick = (of: string, loads: string) => once({ deliveryId: collected.deliveryId, bookingId: of, loads });
  await done(tickOff.run(holder.caller, tick(collected.bookingId, '3')));
  await done(tickOff.run(neighbour.caller, tick(collected.otherBookingId, '2')));
  const beyond = { ...tick(collected.otherBookingId, '1'), reason: word('reason') };
  await done(enterBeyond.run(secretary, beyond));
  return {
    plannedId: await plan('planned', 'horse-manure', '400'),
    openId: opened.deliveryId,
    closedId: (await close('closed', 'cattle-manure', '750')).deliveryId,
    tippedId: (await tip('tipped', 'mixed-manure', '600')).deliveryId,
    sharedId,
    collectedId: collected.deliveryId,
    bookingId,
  };
}
