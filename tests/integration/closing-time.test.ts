import { beforeAll, describe, expect, it, vi } from 'vitest';
import { wordsFor } from '@/app/_server/words';
import { db } from '@/lib/data/db';
import { bookLoads, typeInBookings, withdrawBooking } from '@/lib/usecases/deliveries/book-loads';
import { changeDelivery, openDelivery, planDelivery, postponeDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import type { Outcome } from '@/lib/usecases/refusal';
import {
  deliveryFacts,
  done,
  makeBed,
  makeMember,
  makePlot,
  makeSociety,
  once,
  type TestMember,
} from '../fixtures/society';

// The server lives on one side of the date line, the society on the other.
process.env.TZ = 'America/Los_Angeles';

// The clock that the use-cases read, moved by hand; only `now` is ours.
const clock = vi.hoisted(() => ({ at: new Date() }));
vi.mock('@/lib/platform/clock', async (original) => {
  const real = await original<typeof import('@/lib/platform/clock')>();
  const now = () => clock.at;
  return { ...real, now, todayIn: (timeZone: string) => real.dayIn(timeZone, clock.at) };
});

let secretary: TestMember['caller'];
let holder: TestMember;
let holdingId: string;

const societies = [
  // In January Auckland is 13 hours ahead of UTC, in July 12; Kathmandu 5 hours 45 minutes all year; Honolulu 10 behind.
  // Source: IANA time zone database, as Node's ICU holds it.
  { timeZone: 'Pacific/Auckland', wall: '2027-01-15T18:00', closes: '2027-01-15T05:00:00Z' },
  { timeZone: 'Pacific/Auckland', wall: '2027-07-15T18:00', closes: '2027-07-15T06:00:00Z' },
  { timeZone: 'Asia/Kathmandu', wall: '2027-01-15T00:00', closes: '2027-01-14T18:15:00Z' },
  { timeZone: 'Pacific/Honolulu', wall: '2027-01-15T23:59', closes: '2027-01-16T09:59:00Z' },
  { timeZone: 'Europe/London', wall: '2027-07-15T18:00', closes: '2027-07-15T17:00:00Z' },
];

it('runs where the server’s zone is another', () => {
  expect(new Date('2027-01-15T05:00:00Z').getHours()).toBe(21);
});

describe.each(societies)('booking that closes at $wall in $timeZone', ({ timeZone, wall, closes }) => {
  const closing = new Date(closes).getTime();
  const seconds = (count: number) => void (clock.at = new Date(closing + count * 1000));
  const days = (count: number) => new Date(closing + count * 86_400_000).toISOString().slice(0, 10);
  const facts = { name: 'A load', arrivesOn: days(3), collectByOn: days(9), closesAt: wall };
  let deliveryId: string;

  beforeAll(async () => {
    seconds(-3 * 86_400);
    const society = await makeSociety();
    await db().society.update({ where: { id: society.id }, data: { timeZone } });
    secretary = society.secretary.caller;
    holder = await makeMember(society);
    const plot = await makePlot(society, 'X', [holder.id]);
    holdingId = plot.holdingId;
    await makeBed(society, plot);
    deliveryId = (await done(planDelivery.run(secretary, once(deliveryFacts(facts))))).deliveryId;
    await done(openDelivery.run(secretary, once({ deliveryId })));
  });

  const book = (asked: string) => bookLoads.run(holder.caller, once({ deliveryId, holdingId, asked }));
  const typeIn = (asked: string) => typeInBookings.run(secretary, once({ deliveryId, rows: [{ holdingId, asked }] }));
  const said = async (outcome: Promise<Outcome<unknown>>) => {
    const answer = await outcome;
    return answer.ok ? 'taken' : answer.refusals.map(wordsFor).join(' ');
  };
  const asked = async () => (await db().booking.findFirst({ where: { deliveryId } }))?.asked ?? null;

  it('is kept as that very instant', async () => {
    const { closesAt } = await db().delivery.findUniqueOrThrow({ where: { id: deliveryId } });
    expect(closesAt.toISOString()).toBe(new Date(closes).toISOString());
  });

  it('is taken two seconds before, by hand and from paper', async () => {
    seconds(-2);
    expect(await said(book('3'))).toBe('taken');
    expect(await said(typeIn('4'))).toBe('taken');
    expect(await asked()).toBe(4);
  });

  it.each([0, 2, 3600])('is refused %i seconds after, with the time as the society’s clock shows it', async (late) => {
    seconds(late);
    const time = wall.replace('T', ' ');
    for (const outcome of [book('5'), typeIn('5'), withdrawBooking.run(holder.caller, once({ deliveryId, holdingId }))])
      expect(await said(outcome)).toContain(`Booking closed at ${time}`);
    expect(await asked()).toBe(4);
  });

  it('cannot be planned, changed or put off to a time gone by, by a second', async () => {
    seconds(1);
    expect(await said(planDelivery.run(secretary, once(deliveryFacts(facts))))).toMatch(/passed already/);
    seconds(-1);
    const put = { deliveryId, arrivesOn: facts.arrivesOn, collectByOn: facts.collectByOn, closesAt: wall };
    expect(await said(changeDelivery.run(secretary, once({ deliveryId, ...deliveryFacts(facts) })))).toBe('taken');
    expect(await said(postponeDelivery.run(secretary, once(put)))).toBe('taken');
  });
});

describe('a time that the clocks skip', () => {
  it.each([
    ['Europe/London', '2027-03-28T01:30'],
    ['Pacific/Auckland', '2027-09-26T02:30'],
    // Lord Howe Island's clocks move by half an hour.
    ['Australia/Lord_Howe', '2027-10-03T02:15'],
  ])('is refused in %s, and the same time a day later taken', async (timeZone, wall) => {
    clock.at = new Date('2027-01-01T00:00:00Z');
    const society = await makeSociety();
    await db().society.update({ where: { id: society.id }, data: { timeZone } });
    const plan = (closesAt: string) =>
      planDelivery.run(
        society.secretary.caller,
        once(deliveryFacts({ arrivesOn: '2027-11-01', collectByOn: '2027-11-09', closesAt })),
      );
    const outcome = await plan(wall);
    expect(outcome).toMatchObject({ ok: false, refusals: [{ code: 'closing-time-skipped', field: 'closesAt' }] });
    if (!outcome.ok) expect(wordsFor(outcome.refusals[0] as never)).toContain(wall.replace('T', ' '));
    const [day = '', time = ''] = wall.split('T');
    const next = new Date(new Date(`${day}T00:00Z`).getTime() + 86_400_000).toISOString().slice(0, 10);
    await done(plan(`${next}T${time}`));
  });
});
