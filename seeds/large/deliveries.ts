import { createHash } from 'node:crypto';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { commitmentOf, lotSeed } from '@/lib/domain/sharing/lot';
import { settle } from '@/lib/domain/sharing/settle';
import { shareOut } from '@/lib/domain/sharing/share-out';
import type { Chance } from '../chance';
import { type Tables, together } from './insert';

type Given = {
  readonly chance: Chance;
  readonly id: () => string;
  readonly societyId: string;
  readonly siteId: string;
  readonly secretaryId: string;
  readonly holdings: readonly { holdingId: string; memberId: string; beds: readonly { bedId: string }[] }[];
  readonly seasons: number;
  readonly today: CalendarDate;
};

const materialKey = 'horse-manure';

/** One settled delivery a season, each shared out by the queue with the credits that the last one left, and one that is open. */
export function makeDeliveries(given: Given): Tables {
  const credits = new Map<string, number>();
  const past = Array.from({ length: given.seasons }, (_, at) =>
    pastDelivery(given, addDays(given.today, -365 * (given.seasons - at) + 90), credits),
  );
  return together([...past, openDelivery(given)]);
}

function pastDelivery(given: Given, arrivesOn: CalendarDate, credits: Map<string, number>): Tables {
  const { id, societyId, secretaryId } = given;
  const deliveryId = id();
  const bytesHex = createHash('sha256').update(deliveryId).digest('hex');
  const bookings = bookingsFor(given, deliveryId, 0.85);
  const claims = bookings.map(({ id: claim, asked, needLoads: need, holdingId }) => ({
    id: claim,
    asked,
    need,
    creditMillionths: credits.get(holdingId) ?? 0,
  }));
  const loads = Math.floor(claims.reduce((sum, { asked }) => sum + asked, 0) * 0.8);
  const seed = lotSeed({ bytesHex, deliveryId, bookings: claims });
  const result = shareOut({ loads, claims, lotSeed: seed });
  const shares = new Map(result.shares.map((share) => [share.id, share]));
  const received = claims.map((claim) => ({ ...claim, collected: shares.get(claim.id)?.share ?? 0 }));
  const settled = settle({ loads, claims: received, lotSeed: seed });
  const holdingOf = new Map(bookings.map((booking) => [booking.id, booking.holdingId]));
  const changes = settled.changes.filter(({ changeMillionths }) => changeMillionths !== 0);
  for (const { id: claim, changeMillionths } of changes) {
    const holdingId = holdingOf.get(claim) ?? '';
    credits.set(holdingId, (credits.get(holdingId) ?? 0) + changeMillionths);
  }
  const { shares: _, lotOrder: __, ...how } = result;
  const at = `${arrivesOn}T12:00:00Z`;
  const shared = {
    heapLoads: loads,
    sharedLoads: sum(received),
    shareOutRecord: { loads, frozen: claims, lotSeed: seed, ...how },
  };
  const revealed = { lotRevealedAt: at, closedAt: at, confirmedAt: at, settledAt: at };
  const facts = factsOf(given, deliveryId, bytesHex, { arrivesOn, loads });
  return {
    // Its state is set to settled once its collections are counted.
    Delivery: [{ ...facts, state: 'collecting', ...shared, ...revealed }],
    Booking: bookings.map((booking) => {
      const { share = 0, dueMillionths = 0, reason } = shares.get(booking.id) ?? {};
      const creditBeforeMillionths = claims.find((claim) => claim.id === booking.id)?.creditMillionths ?? 0;
      return { ...booking, creditBeforeMillionths, share, dueMillionths, reason };
    }),
    Collection: received
      .filter(({ collected }) => collected > 0)
      .map((claim) => {
        const whose = { societyId, deliveryId, bookingId: claim.id, byMemberId: secretaryId };
        return { id: id(), ...whose, loads: claim.collected, beyond: false, at };
      }),
    CreditEntry: changes.map(({ id: claim, changeMillionths }) => {
      const whose = { societyId, deliveryId, materialKey, holdingId: holdingOf.get(claim) };
      return { id: id(), ...whose, changeMillionths, code: 'settled', at };
    }),
  };
}

function openDelivery(given: Given): Tables {
  const { id, societyId, today } = given;
  const deliveryId = id();
  const bytesHex = createHash('sha256').update(deliveryId).digest('hex');
  const bookings = bookingsFor(given, deliveryId, 0.7);
  const bedsOf = new Map(given.holdings.map(({ holdingId, beds }) => [holdingId, beds]));
  const facts = factsOf(given, deliveryId, bytesHex, { arrivesOn: addDays(today, 9), loads: 200 });
  return {
    Delivery: [{ ...facts, state: 'open', heapLoads: null, sharedLoads: 0, shareOutRecord: null, ...notYet }],
    Booking: bookings.map((booking) => ({ ...booking, ...unshared })),
    BookingBed: bookings.flatMap((booking) =>
      (bedsOf.get(booking.holdingId) ?? [])
        .slice(0, 3)
        .map(({ bedId }, order) => ({ societyId, bookingId: booking.id, bedId, order, dueCm2: 156_000 })),
    ),
  };
}

const notYet = { lotRevealedAt: null, closedAt: null, confirmedAt: null, settledAt: null };
const unshared = { creditBeforeMillionths: null, share: null, dueMillionths: null, reason: null };

function bookingsFor({ chance, id, societyId, holdings }: Given, deliveryId: string, share: number) {
  return holdings
    .filter(() => chance.next() < share)
    .map(({ holdingId, memberId }) => {
      const needLoads = chance.whole(0, 9);
      const asked = Math.max(1, needLoads + chance.whole(-1, 4));
      const needReason = { season: 0, lines: [] };
      return { id: id(), societyId, deliveryId, holdingId, bookedByMemberId: memberId, asked, needLoads, needReason };
    });
}

function factsOf(
  { societyId, siteId, secretaryId }: Given,
  id: string,
  lotBytesHex: string,
  { arrivesOn, loads }: { arrivesOn: CalendarDate; loads: number },
) {
  return {
    id,
    societyId,
    siteId,
    name: `Stable load of ${arrivesOn}`,
    materialKey,
    ageMonths: 14,
    amountThousandths: Math.max(loads, 1) * 1000,
    amountUnit: 'loads',
    densityGPerL: 400,
    barrowLitres: 85,
    rateGPerM2: 5000,
    expectedLoads: loads,
    capLoads: 12,
    keyHolderId: secretaryId,
    unloadersWanted: 4,
    arrivesOn,
    collectByOn: addDays(arrivesOn, 14),
    closesAt: `${addDays(arrivesOn, -3)}T18:00:00Z`,
    lotBytesHex,
    lotCommitment: commitmentOf(lotBytesHex),
  };
}

function sum(received: readonly { collected: number }[]): number {
  return received.reduce((total, { collected }) => total + collected, 0);
}
