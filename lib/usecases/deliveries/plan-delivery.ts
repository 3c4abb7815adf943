import 'server-only';
import type { z } from 'zod';
import { bookingsOf } from '@/lib/data/booking';
import {
  changeDelivery as writeChange,
  createDelivery,
  type DeliveryFacts,
  type DeliveryRecord,
  keepLot,
  moveDelivery,
  postponeTo,
} from '@/lib/data/delivery';
import { sitesOf } from '@/lib/data/plot-store';
import { settingsOn } from '@/lib/data/setting';
import { memberById } from '@/lib/data/member';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { loadsIn } from '@/lib/domain/quantity/load';
import { commitmentOf } from '@/lib/domain/sharing/lot';
import { instantIn, wallIn } from '@/lib/platform/clock';
import { drawLotBytes } from '@/lib/platform/secret';
import {
  callOffInput,
  changeDeliveryInput,
  deliveryInput,
  planDeliveryInput,
  postponeInput,
} from '@/lib/schemas/deliveries/delivery';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';
import { bookStanding } from './book-standing';
import { checkDensity } from './check-density';
import { takeStep, tellBookers } from './open-delivery';
import { everyMemberId } from './recipients';

type Typed = Omit<z.output<typeof planDeliveryInput>, 'writeId'>;

// The barrow and the dressing are those in force when it is planned, and stay so for this delivery.
async function factsOf({ tx, scope, today, now }: WriteContext, typed: Typed): Promise<DeliveryFacts> {
  const { amount: thousandths, amountUnit: unit, price, closesAt: wall, ...rest } = typed;
  checkDensity(typed.materialKey, typed.densityGPerL, 'densityGPerL');
  if (typed.collectByOn < typed.arrivesOn) refuse('days-out-of-order', { field: 'collectByOn' });
  const closesAt = closingAt(scope.timeZone, wall);
  if (closesAt <= now) refuse('closing-in-the-past', { field: 'closesAt' });
  const [site] = await sitesOf(tx, scope);
  if (!site) refuse('no-site');
  if (typed.keyHolderId && !(await memberById(tx, scope, typed.keyHolderId, today))) throw new NotFound();
  const { barrowLitres, manureRateGPerM2 } = await settingsOn(tx, scope, today);
  const amount = { thousandths, unit };
  return {
    ...rest,
    siteId: site.id,
    amount,
    barrowLitres,
    rateGPerM2: manureRateGPerM2,
    closesAt,
    priceMinor: price,
    expectedLoads: loadsIn(amount, barrowLitres, typed.densityGPerL),
  };
}

// A time that spring's change of the clocks skips is no time to close at.
function closingAt(timeZone: string, wall: string): Date {
  const instant = instantIn(timeZone, wall);
  if (wallIn(timeZone, instant) !== wall)
    refuse('closing-time-skipped', { field: 'closesAt', numbers: { at: wall.replace('T', ' ') } });
  return instant;
}

// The book never holds the gate note.
function forBook({ gateNote: _, closesAt, amount, ...facts }: DeliveryFacts) {
  return { ...facts, ...amount, closesAt: closesAt.toISOString() };
}

/** Plan a delivery. */
export const planDelivery = mutation({
  name: 'plan-delivery',
  allow: canRunSociety,
  input: planDeliveryInput,
  write: async (context, { writeId: _, ...typed }) => {
    const facts = await factsOf(context, typed);
    const deliveryId = await createDelivery(context.tx, context.scope, facts);
    context.note({ verb: 'planned', thing: 'delivery', thingId: deliveryId, after: forBook(facts) });
    return { deliveryId };
  },
});

/** Change what was planned, until booking closes. */
export const changeDelivery = mutation({
  name: 'change-delivery',
  allow: canRunSociety,
  input: changeDeliveryInput,
  write: async (context, { writeId: _, deliveryId, ...typed }) => {
    const before = await takeStep(context, deliveryId, 'change');
    const facts = await factsOf(context, typed);
    if (before.state === 'open') await checkAgainstBookings(context, before, facts);
    // Once it is open, the rules it was opened with stay.
    const kept =
      before.state === 'open' ? { ...facts, barrowLitres: before.barrowLitres, rateGPerM2: before.rateGPerM2 } : facts;
    await writeChange(context.tx, context.scope, deliveryId, kept);
    context.note({
      verb: 'changed',
      thing: 'delivery',
      thingId: deliveryId,
      before: { expectedLoads: before.expectedLoads, closesAt: before.closesAt.toISOString() },
      after: forBook(kept),
    });
    if (before.state === 'open') await tellOfChange(context, before, kept);
    return { deliveryId };
  },
});

// A booking carries the need worked out when it was made, which another material or density would make untrue; and
// what was asked within the limit of its day stays asked.
async function checkAgainstBookings({ tx, scope }: WriteContext, before: DeliveryRecord, facts: DeliveryFacts) {
  const bookings = await bookingsOf(tx, scope, before.id);
  const changed = (['materialKey', 'densityGPerL'] as const).find((key) => facts[key] !== before[key]);
  if (changed && bookings.length) refuse('booked-already', { field: changed });
  const most = Math.max(0, ...bookings.map(({ asked }) => asked));
  if (facts.capLoads !== null && facts.capLoads < most)
    refuse('booked-above-cap', { field: 'capLoads', numbers: { most } });
}

// What somebody planned their week by.
async function tellOfChange(context: WriteContext, before: DeliveryRecord, now: DeliveryFacts): Promise<void> {
  const at = (instant: Date) => wallIn(context.scope.timeZone, instant).replace('T', ' ');
  const changes = [
    now.arrivesOn !== before.arrivesOn && `it comes on ${now.arrivesOn}`,
    now.collectByOn !== before.collectByOn && `it is to be collected by ${now.collectByOn}`,
    now.closesAt.getTime() !== before.closesAt.getTime() && `booking closes on ${at(now.closesAt)}`,
    now.expectedLoads !== before.expectedLoads && `about ${now.expectedLoads} barrow-loads are expected`,
    now.priceMinor !== before.priceMinor && `it costs ${(now.priceMinor / 100).toFixed(2)} in all`,
    now.dropPoint !== before.dropPoint && `it is tipped at: ${now.dropPoint ?? 'a place to be named'}`,
  ].filter((change) => change !== false);
  if (changes.length === 0) return;
  const body = `“${now.name}” has changed: ${changes.join('; ')}. Your booking stands; you can change it until booking closes.`;
  await tellBookers(context, before, `${now.name} has changed`, body);
}

/** Open booking: the lot is drawn and its hash published; all members with an address are told. */
export const openDelivery = mutation({
  name: 'open-delivery',
  allow: canRunSociety,
  input: deliveryInput,
  write: async (context, { deliveryId }) => {
    const { tx, scope, note } = context;
    const delivery = await takeStep(context, deliveryId, 'open');
    if (delivery.closesAt <= context.now) refuse('closing-in-the-past');
    const bytesHex = drawLotBytes();
    const commitment = commitmentOf(bytesHex);
    await keepLot(tx, scope, deliveryId, { bytesHex, commitment });
    note({ verb: 'opened', thing: 'delivery', thingId: deliveryId, after: { commitment } });
    const standing = await bookStanding(context, delivery);
    await tell(
      context,
      await everyMemberId(tx, scope, context.today),
      `${delivery.name} is open for booking`,
      `Booking is open for “${delivery.name}”, about ${delivery.expectedLoads} barrow-loads. Sign in to see what your ground needs, and to book.`,
    );
    return { deliveryId, standing };
  },
});

/** Close booking before its time. */
export const closeDelivery = mutation({
  name: 'close-delivery',
  allow: canRunSociety,
  input: deliveryInput,
  write: async (context, { deliveryId }) => {
    await takeStep(context, deliveryId, 'close');
    await moveDelivery(context.tx, context.scope, deliveryId, {
      state: 'closed',
      closedAt: context.now,
      closesAt: context.now,
    });
    context.note({ verb: 'closed', thing: 'delivery', thingId: deliveryId });
    return { deliveryId };
  },
});

// Nobody was told of a delivery that was only planned.
async function tellEverybody(context: WriteContext, { state }: DeliveryRecord, subject: string, body: string) {
  if (state !== 'planned')
    await tell(context, await everyMemberId(context.tx, context.scope, context.today), subject, body);
}

/** Put a delivery off: bookings stand, and everybody who knows of it is told. */
export const postponeDelivery = mutation({
  name: 'postpone-delivery',
  allow: canRunSociety,
  input: postponeInput,
  write: async (context, { deliveryId, arrivesOn, collectByOn, closesAt: wall }) => {
    const before = await takeStep(context, deliveryId, 'postpone');
    if (collectByOn < arrivesOn) refuse('days-out-of-order', { field: 'collectByOn' });
    // Once booking is closed it stays closed: the bookings are frozen under the lot.
    const closesAt =
      before.state === 'planned' || before.state === 'open' ? closingAt(context.scope.timeZone, wall) : before.closesAt;
    if (before.state === 'open' && closesAt <= context.now) refuse('closing-in-the-past', { field: 'closesAt' });
    await postponeTo(context.tx, context.scope, deliveryId, { arrivesOn, collectByOn, closesAt });
    context.note({
      verb: 'postponed',
      thing: 'delivery',
      thingId: deliveryId,
      before: { arrivesOn: before.arrivesOn, collectByOn: before.collectByOn },
      after: { arrivesOn, collectByOn },
    });
    await tellEverybody(
      context,
      before,
      `${before.name} is put off`,
      `“${before.name}” now comes on ${arrivesOn}; collect by ${collectByOn}. Bookings stand.`,
    );
    return { deliveryId };
  },
});

/** Call a delivery off before anything was collected: credits stay untouched, and everybody who knows of it is told. */
export const callOffDelivery = mutation({
  name: 'call-off-delivery',
  allow: canRunSociety,
  input: callOffInput,
  write: async (context, { deliveryId }) => {
    const before = await takeStep(context, deliveryId, 'call-off');
    await moveDelivery(context.tx, context.scope, deliveryId, { state: 'called_off' });
    context.note({ verb: 'called off', thing: 'delivery', thingId: deliveryId, before: { state: before.state } });
    await tellEverybody(
      context,
      before,
      `${before.name} is called off`,
      `“${before.name}” does not come. Nobody’s credit changes.`,
    );
    return { deliveryId };
  },
});
