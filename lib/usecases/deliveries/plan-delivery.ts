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
import { dropPointName } from '@/lib/data/drop-point';
import { sitesOf } from '@/lib/data/plot-store';
import { settingsOn } from '@/lib/data/setting';
import { supplierById } from '@/lib/data/supplier';
import { memberById } from '@/lib/data/member';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { loadsIn } from '@/lib/domain/quantity/load';
import { commitmentOf } from '@/lib/domain/sharing/lot';
import { wallIn } from '@/lib/platform/clock';
import { drawLotBytes } from '@/lib/platform/secret';
import {
  callOffInput,
  changeDeliveryInput,
  deliveryInput,
  planDeliveryInput,
  postponeInput,
} from '@/lib/schemas/deliveries/delivery';
import { closingAt } from '../closing-at';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';
import { bookStanding } from './book-standing';
import { countOf } from './count-of';
import { loadTyped } from './load-typed';
import { takeStep, tellBookers } from './open-delivery';
import { everyMemberId } from './recipients';
import { dropPointFor } from './tip-at';
import { checkSameDay, comeWith, firstOfLorry, loadsComing, namesOf, takeStepTogether } from './together';

type Typed = Omit<z.output<typeof planDeliveryInput>, 'writeId' | 'withId'>;

// The rules are those in force when it is planned, and stay so for this delivery.
type Rules = Pick<DeliveryFacts, 'barrowLitres' | 'rateGPerM2' | 'intervalYears' | 'cultivableSharePercent'>;

function rulesOf({ barrowLitres, rateGPerM2, intervalYears, cultivableSharePercent }: Rules): Rules {
  return { barrowLitres, rateGPerM2, intervalYears, cultivableSharePercent };
}

function inForce(settings: SettingValues): Rules {
  const { manureRateGPerM2: rateGPerM2, manuringIntervalYears: intervalYears } = settings;
  return rulesOf({ ...settings, rateGPerM2, intervalYears });
}

async function factsOf(
  { tx, scope, today, now }: WriteContext,
  typed: Typed,
  before: Rules | null = null,
): Promise<DeliveryFacts> {
  const { amount: thousandths, amountUnit: unit, price, closesAt: wall, ...rest } = loadTyped(typed);
  if (typed.collectByOn < typed.arrivesOn) refuse('days-out-of-order', { field: 'collectByOn' });
  const closesAt = closingAt(scope.timeZone, wall);
  if (closesAt <= now) refuse('closing-in-the-past', { field: 'closesAt' });
  const siteId = await siteFor({ tx, scope }, typed.dropPointId);
  if (typed.keyHolderId && !(await memberById(tx, scope, typed.keyHolderId, today))) throw new NotFound();
  const supplier = typed.supplierId ? await supplierById(tx, scope, typed.supplierId) : null;
  if (typed.supplierId && !supplier) throw new NotFound();
  const rules = before ? rulesOf(before) : inForce(await settingsOn(tx, scope, today));
  const amount = { thousandths, unit };
  return {
    ...rest,
    supplier: rest.supplier ?? supplier?.name ?? null,
    siteId,
    amount,
    ...rules,
    closesAt,
    priceMinor: price,
    expectedLoads: loadsIn(amount, rules.barrowLitres, rest.densityGPerL),
  };
}

// It goes to the site of its drop point; where none is named yet, to the society's first.
async function siteFor(context: Pick<WriteContext, 'tx' | 'scope'>, dropPointId: string | null): Promise<string> {
  if (dropPointId) return (await dropPointFor(context, dropPointId, null)).siteId;
  const [site] = await sitesOf(context.tx, context.scope);
  return site?.id ?? refuse('no-site');
}

// The book never holds the gate note.
function forBook({ gateNote: _, closesAt, amount, ...facts }: DeliveryFacts) {
  return { ...facts, ...amount, closesAt: closesAt.toISOString() };
}

/** Plan a delivery, or another material that comes on the lorry of one. */
export const planDelivery = mutation({
  name: 'plan-delivery',
  allow: canRunSociety,
  input: planDeliveryInput,
  write: async (context, { writeId: _, withId, ...typed }) => {
    const facts = await factsOf(context, typed);
    const first = withId ? await firstOfLorry(context, withId, facts) : null;
    const deliveryId = await createDelivery(context.tx, context.scope, facts);
    if (first) await comeWith(context, first, deliveryId);
    context.note({
      verb: 'planned',
      thing: 'delivery',
      thingId: deliveryId,
      after: { ...forBook(facts), comesWith: withId },
    });
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
    const kept = await factsOf(context, typed, before);
    await checkSameDay(context, before, kept);
    if (before.state === 'open') await checkAgainstBookings(context, before, kept);
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
  const changed = (['materialKey', 'densityGPerL', 'baleMassG'] as const).find((key) => facts[key] !== before[key]);
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
    now.expectedLoads !== before.expectedLoads && `about ${countOf(now.expectedLoads, now.loadUnit)} are expected`,
    now.priceMinor !== before.priceMinor && `it costs ${formatPounds(now.priceMinor)} in all`,
    now.thanks !== before.thanks && `what is given beside money: ${now.thanks ?? 'nothing'}`,
    (now.dropPoint !== before.dropPoint || now.dropPointId !== before.dropPointId) &&
      `it is tipped at: ${await placeOf(context, now)}`,
  ].filter((change) => change !== false);
  if (changes.length === 0) return;
  const body = `“${now.name}” has changed: ${changes.join('; ')}. Your booking stands; you can change it until booking closes.`;
  await tellBookers(context, before, `${now.name} has changed`, body);
}

async function placeOf({ tx, scope }: WriteContext, { dropPointId, dropPoint }: DeliveryFacts): Promise<string> {
  const name = dropPointId && (await dropPointName(tx, scope, dropPointId));
  return [name, dropPoint].filter(Boolean).join(', ') || 'a place to be named';
}

/** Open booking, for all that comes together: each lot is drawn and its hash published; every member is told once. */
export const openDelivery = mutation({
  name: 'open-delivery',
  allow: canRunSociety,
  input: deliveryInput,
  write: async (context, { deliveryId }) => {
    const coming = await takeStepTogether(context, deliveryId, 'open');
    if (coming.some(({ closesAt }) => closesAt <= context.now)) refuse('closing-in-the-past');
    for (const { id } of coming) await drawLot(context, id);
    let standing = 0;
    for (const delivery of coming) standing += await bookStanding(context, delivery);
    await tell(
      context,
      await everyMemberId(context.tx, context.scope, context.today),
      `${coming.map(({ name }) => name).join(', with ')} ${coming.length > 1 ? 'are' : 'is'} open for booking`,
      `Booking is open for ${loadsComing(coming)}${coming.length > 1 ? '; they come together' : ''}. Sign in to see what your ground needs, and to book.`,
    );
    return { deliveryId, standing };
  },
});

async function drawLot({ tx, scope, note }: WriteContext, id: string): Promise<void> {
  const bytesHex = drawLotBytes();
  const commitment = commitmentOf(bytesHex);
  await keepLot(tx, scope, id, { bytesHex, commitment });
  note({ verb: 'opened', thing: 'delivery', thingId: id, after: { commitment } });
}

/** Close booking before its time, of all that comes together. */
export const closeDelivery = mutation({
  name: 'close-delivery',
  allow: canRunSociety,
  input: deliveryInput,
  write: async (context, { deliveryId }) => {
    const { tx, scope, now, note } = context;
    for (const { id } of await takeStepTogether(context, deliveryId, 'close')) {
      await moveDelivery(tx, scope, id, { state: 'closed', closedAt: now, closesAt: now });
      note({ verb: 'closed', thing: 'delivery', thingId: id });
    }
    return { deliveryId };
  },
});

// Nobody was told of a delivery that was only planned.
async function tellEverybody(
  context: WriteContext,
  coming: readonly DeliveryRecord[],
  words: (known: readonly DeliveryRecord[]) => { subject: string; body: string },
): Promise<void> {
  const known = coming.filter(({ state }) => state !== 'planned');
  if (known.length === 0) return;
  const { subject, body } = words(known);
  await tell(context, await everyMemberId(context.tx, context.scope, context.today), subject, body);
}

type Days = Pick<z.output<typeof postponeInput>, 'arrivesOn' | 'collectByOn' | 'closesAt'>;

/** Put a delivery off, with all that comes together: bookings stand, and everybody who knows of it is told. */
export const postponeDelivery = mutation({
  name: 'postpone-delivery',
  allow: canRunSociety,
  input: postponeInput,
  write: async (context, { deliveryId, ...days }) => {
    const coming = await takeStepTogether(context, deliveryId, 'postpone');
    if (days.collectByOn < days.arrivesOn) refuse('days-out-of-order', { field: 'collectByOn' });
    for (const one of coming) await putOff(context, one, days);
    await tellEverybody(context, coming, (known) => ({
      subject: `${known[0]?.name} is put off`,
      body: `${namesOf(known)} now ${known.length > 1 ? 'come' : 'comes'} on ${days.arrivesOn}; collect by ${days.collectByOn}. Bookings stand.`,
    }));
    return { deliveryId };
  },
});

async function putOff(context: WriteContext, before: DeliveryRecord, { arrivesOn, collectByOn, closesAt: wall }: Days) {
  const { tx, scope, now, note } = context;
  // Once booking is closed it stays closed: the bookings are frozen under the lot.
  const closesAt =
    before.state === 'planned' || before.state === 'open' ? closingAt(scope.timeZone, wall) : before.closesAt;
  if (before.state === 'open' && closesAt <= now) refuse('closing-in-the-past', { field: 'closesAt' });
  await postponeTo(tx, scope, before.id, { arrivesOn, collectByOn, closesAt });
  note({
    verb: 'postponed',
    thing: 'delivery',
    thingId: before.id,
    before: { arrivesOn: before.arrivesOn, collectByOn: before.collectByOn },
    after: { arrivesOn, collectByOn },
  });
}

/** Call a delivery off, alone or with what comes with it, before anything was collected: credits stay untouched, all are told. */
export const callOffDelivery = mutation({
  name: 'call-off-delivery',
  allow: canRunSociety,
  input: callOffInput,
  write: async (context, { deliveryId, together }) => {
    const coming = together
      ? await takeStepTogether(context, deliveryId, 'call-off')
      : [await takeStep(context, deliveryId, 'call-off')];
    for (const { id, state } of coming) {
      await moveDelivery(context.tx, context.scope, id, { state: 'called_off' });
      context.note({ verb: 'called off', thing: 'delivery', thingId: id, before: { state } });
    }
    await tellEverybody(context, coming, (known) => ({
      subject: `${known[0]?.name} is called off`,
      body: `${namesOf(known)} ${known.length > 1 ? 'do' : 'does'} not come. Nobody’s credit changes.`,
    }));
    return { deliveryId };
  },
});
