import { randomUUID } from 'node:crypto';
import { inTransaction } from '@/lib/data/db';
import type { Scope } from '@/lib/data/scope';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { bookLoads } from '@/lib/usecases/deliveries/book-loads';
import { openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';
import type { Chance } from '../chance';
import { callerOf } from './caller-of';
import { loadPastDelivery } from './deliveries';
import { done } from './done';
import { drawPaths } from './paths';
import { shown } from './people';
import { planStraw } from './straw';
import { loadSuppliers } from './suppliers';

const supplier = 'the stables at Marl Lane';

/** A holding, and the member who speaks for it; some have no account. */
export type Claimant = { holdingId: string; memberId: string; onPaper: boolean };

/** The deliveries of the year that are settled, and the one that is open now. */
export async function loadDeliveries(
  scope: Scope,
  siteId: string,
  claimants: readonly Claimant[],
  chance: Chance,
  today: CalendarDate,
): Promise<{ spring: string; summer: string }> {
  const some = (share: number) => claimants.filter(() => chance.next() < share);
  const supplierId = await loadSuppliers(await callerOf(scope.slug, scope.memberId), supplier, done);
  const spring = {
    name: 'Stable load of the spring',
    arrivesOn: addDays(today, -250),
    heapLoads: 190,
    expectedLoads: 190,
    supplier,
    priceMinor: 15_200,
    supplierId,
  };
  const summer = {
    name: 'Stable load of the summer',
    arrivesOn: addDays(today, -70),
    heapLoads: 96,
    expectedLoads: 140,
    supplier,
    priceMinor: 7_200,
    supplierId,
  };
  const past = {
    spring: await inTransaction((tx) => loadPastDelivery(tx, scope, siteId, spring, some(0.85), chance)),
    summer: await inTransaction((tx) => loadPastDelivery(tx, scope, siteId, summer, some(0.8), chance)),
  };
  const dropPointId = await drawPaths(await callerOf(scope.slug, scope.memberId), siteId);
  await bookNext(scope, claimants, chance, { today, dropPointId, supplierId });
  return past;
}

// The delivery that is open now goes the way of every other: planned and opened by the secretary, booked by its holders.
async function bookNext(
  scope: Scope,
  claimants: readonly Claimant[],
  chance: Chance,
  { today, dropPointId, supplierId }: { today: CalendarDate; dropPointId: string; supplierId: string },
): Promise<void> {
  const arrivesOn = addDays(today, 9);
  const day = new Date(arrivesOn).toLocaleDateString('en-GB', { day: 'numeric', month: 'long', timeZone: 'UTC' });
  const secretary = await callerOf(scope.slug, scope.memberId);
  const { deliveryId } = await done(
    planDelivery.run(secretary, {
      writeId: randomUUID(),
      name: `Stable load of ${day}`,
      materialKey: 'horse-manure',
      ageMonths: '14',
      supplier,
      supplierId,
      amount: '180',
      amountUnit: 'loads',
      densityGPerL: '400',
      capLoads: '12',
      dropPoint: 'on the hard standing, clear of the tap',
      dropPointId,
      arrivesOn,
      collectByOn: addDays(today, 23),
      closesAt: `${addDays(today, 6)}T18:00`,
      keyHolderId: scope.memberId,
      gateNote: 'The chain has a number lock; ask the key-holder.',
      unloadersWanted: '4',
      price: '180',
    }),
  );
  await planStraw(secretary, deliveryId);
  await done(openDelivery.run(secretary, { writeId: randomUUID(), deliveryId }));
  const booking = claimants
    .filter(({ onPaper }) => !onPaper)
    .filter((_, at) => at % 5 !== 2)
    .slice(0, 25);
  for (const { holdingId, memberId } of booking) {
    const caller = await callerOf(scope.slug, memberId);
    const { claims } = await readDelivery.run(caller, { deliveryId });
    const mine = claims.find(({ holding }) => holding.id === holdingId);
    // Those whose sign-ins are shown have theirs still to book.
    if (!mine || mine.holding.members.some(({ name }) => shown.includes(name))) continue;
    const need = mine.need?.loads ?? 0;
    const asked = String(Math.max(1, Math.min(12, need + chance.whole(-2, 2))));
    const beds = mine.need?.lines.flatMap(({ id, kind, massG }) => (kind === 'bed' && massG > 0 ? [id] : [])) ?? [];
    await done(bookLoads.run(caller, { writeId: randomUUID(), deliveryId, holdingId, asked, beds }));
  }
}
