import ICAL from 'ical.js';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import { calendarText } from '@/app/_server/calendar-reply';
import { db } from '@/lib/data/db';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import {
  callOffDelivery,
  closeDelivery,
  planDelivery,
  postponeDelivery,
} from '@/lib/usecases/deliveries/plan-delivery';
import { makeFeed, readFeed, revokeFeed } from '@/lib/usecases/reminders/calendar-feed';
import { openLoad } from '../fixtures/open-load';
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

// The clock that the use-cases read, moved by hand; only `now` is ours.
const clock = vi.hoisted(() => ({ at: new Date('2026-11-28T10:00:00Z') }));
vi.mock('@/lib/platform/clock', async (original) => {
  const real = await original<typeof import('@/lib/platform/clock')>();
  const now = () => clock.at;
  return { ...real, now, todayIn: (timeZone: string) => real.dayIn(timeZone, clock.at) };
});
const later = (minutes: number) => void (clock.at = new Date(clock.at.getTime() + minutes * 60_000));

let society: TestSociety;
let secretary: TestMember['caller'];
let holder: TestMember;
let holdingId: string;
let token: string;

const tokenIn = (address: string) => address.split('/').at(-1)?.replace('.ics', '') ?? '';
const days = { name: 'Stable load', arrivesOn: '2026-12-08', collectByOn: '2026-12-20', closesAt: '2026-12-05T18:00' };

beforeAll(async () => {
  society = await makeSociety();
  secretary = society.secretary.caller;
  holder = await makeMember(society);
  ({ holdingId } = await makePlot(society, 'F1', [holder.id]));
  token = tokenIn((await done(makeFeed.run(holder.caller, once({})))).address);
});

type Event = { uid: string; day: string; summary: string; sequence: number; status: string };

/** The calendar as a parser that is not ours reads it. */
async function eventsOf(of = token): Promise<Event[]> {
  const feed = await readFeed(of);
  if (!feed) throw new Error('the address leads nowhere');
  const calendar = new ICAL.Component(ICAL.parse(calendarText(feed)));
  return calendar.getAllSubcomponents('vevent').map((component) => {
    const event = new ICAL.Event(component);
    expect([event.startDate.isDate, event.endDate.isDate]).toEqual([true, true]);
    const status = String(component.getFirstPropertyValue('status'));
    const { uid, summary, sequence } = event;
    return { uid, summary, sequence, status, day: event.startDate.toString() };
  });
}

describe('a private calendar', () => {
  let deliveryId: string;
  let first: Event[];

  it('has nothing in it where nothing has a day', async () => expect(await eventsOf()).toEqual([]));

  it('tells what has a day, and reads the same when it is read again', async () => {
    deliveryId = await openLoad(society, days);
    first = await eventsOf();
    expect(first).toMatchObject([
      { day: '2026-12-05', summary: 'Booking closes: Stable load', sequence: 0, status: 'CONFIRMED' },
    ]);
    later(30);
    expect(await eventsOf()).toEqual(first);
  });

  it('has one more when something is booked, under an identity of its own', async () => {
    await done(bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked: '3', beds: [] })));
    const events = await eventsOf();
    expect(events.map(({ summary }) => summary)).toEqual(['Booking closes: Stable load', 'Comes: Stable load']);
    expect(events[0]).toEqual(first[0]);
    expect(new Set(events.map(({ uid }) => uid)).size).toBe(2);
  });

  it('tells a change under the same identity, one further', async () => {
    later(30);
    const put = { arrivesOn: '2026-12-10', collectByOn: '2026-12-20', closesAt: '2026-12-07T18:00' };
    await done(postponeDelivery.run(secretary, once({ deliveryId, ...put })));
    expect(await eventsOf()).toMatchObject([
      { uid: first[0]?.uid, day: '2026-12-07', sequence: 1 },
      { day: '2026-12-10', sequence: 1 },
    ]);
  });

  it('takes out what is over by its doing, and tells two who read at once the same', async () => {
    await done(closeDelivery.run(secretary, once({ deliveryId })));
    const [one, other] = await Promise.all([eventsOf(), eventsOf()]);
    expect(one).toEqual(other);
    expect(one).toMatchObject([
      { uid: first[0]?.uid, sequence: 2, status: 'CANCELLED' },
      { sequence: 1, status: 'CONFIRMED' },
    ]);
    await done(callOffDelivery.run(secretary, once({ deliveryId, sure: 'yes' })));
    expect((await eventsOf()).map(({ status }) => status)).toEqual(['CANCELLED', 'CANCELLED']);
  });

  it('forgets what was off long ago', async () => {
    const { at } = clock;
    later(60 * 24 * 75);
    expect(await eventsOf()).toEqual([]);
    expect(await db().feedEvent.count()).toBe(0);
    clock.at = at;
  });

  it('has nothing of anybody else’s, and nothing that is only planned', async () => {
    const neighbour = await makeMember(society);
    await makePlot(society, 'F2', [neighbour.id]);
    const { address } = await done(makeFeed.run(neighbour.caller, once({})));
    await done(planDelivery.run(secretary, once(deliveryFacts({ ...days, name: 'Secret', materialKey: 'straw' }))));
    const other = await openLoad(society, {
      ...days,
      name: 'Their load',
      materialKey: 'cattle-manure',
      densityGPerL: '750',
    });
    await done(bookLoads.run(holder.caller, once({ deliveryId: other, holdingId, asked: '2', beds: [] })));
    expect((await eventsOf(tokenIn(address))).map(({ summary }) => summary)).toEqual(['Booking closes: Their load']);
  });
});

describe('its address', () => {
  it('is shown again to a form sent twice, and made anew it replaces the one before', async () => {
    const member = await makeMember(society);
    const form = once({});
    const [one, same] = [await done(makeFeed.run(member.caller, form)), await done(makeFeed.run(member.caller, form))];
    expect(same).toEqual(one);
    const next = await done(makeFeed.run(member.caller, once({})));
    expect(await readFeed(tokenIn(one.address))).toBeNull();
    expect(await readFeed(tokenIn(next.address))).not.toBeNull();
    await done(revokeFeed.run(member.caller, once({})));
    expect(await readFeed(tokenIn(next.address))).toBeNull();
    expect(await refusedWith(revokeFeed.run(member.caller, once({})))).toEqual(['no-calendar']);
  });

  it('leads nowhere for who has left, and for guesses', async () => {
    const member = await makeMember(society);
    const { address } = await done(makeFeed.run(member.caller, once({})));
    await db().member.update({ where: { id: member.id }, data: { leftOn: new Date('2026-11-28') } });
    expect(await readFeed(tokenIn(address))).toBeNull();
    for (const guess of ['', 'x', '../..', '0'.repeat(64), `${token}0`, token.toUpperCase(), '\u0000'])
      expect(await readFeed(guess)).toBeNull();
  });

  it('is kept by its hash alone', async () => {
    const rows = await db().$queryRaw<{ row: string }[]>`
      SELECT f::text AS row FROM "CalendarFeed" f UNION ALL SELECT w::text FROM "WriteOnce" w UNION ALL SELECT a::text FROM "AuditRow" a`;
    expect(rows.filter(({ row }) => row.includes(token))).toEqual([]);
  });
});
