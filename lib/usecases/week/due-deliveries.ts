import 'server-only';
import { bookingsOfHoldings } from '@/lib/data/booking';
import type { DeliveryRecord } from '@/lib/data/delivery';
import type { HoldingOnDay } from '@/lib/data/holding';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { DeliveryState } from '@/lib/domain/delivery/steps';
import { canRunSociety } from '@/lib/domain/policy/standing';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import type { Dated } from '@/lib/domain/reminders/dated';
import { dayIn } from '@/lib/platform/clock';
import { needsForDelivery } from '../deliveries/book-loads';
import type { HoldingNeed } from '../ground/holding-need';
import type { ReadContext } from '../operation';

/** One heap of a lorry that can be booked. */
export type Bookable = {
  readonly deliveryId: string;
  readonly name: string;
  readonly need: HoldingNeed;
  /** Null where nobody has said yet. */
  readonly asked: number | null;
};

/** What deliveries want of a member. */
export type DeliveryDue =
  | {
      readonly code: 'book';
      readonly holdingId: string;
      readonly closesAt: Date;
      /** What comes on one lorry, at least one. */
      readonly loads: readonly Bookable[];
    }
  | {
      readonly code: 'collect';
      readonly deliveryId: string;
      readonly name: string;
      readonly loads: number;
      readonly loadUnit: LoadUnit;
      readonly share: number;
      readonly by: CalendarDate;
    }
  | { readonly code: 'run'; readonly deliveryId: string; readonly name: string; readonly step: string };

const steps: Partial<Record<DeliveryState, string>> = {
  planned: 'open it for booking',
  closed: 'booking has closed; measure the heap when it comes',
  tipped: 'measured; share it out',
  shared: 'shared out; it can be collected',
  collecting: 'being collected; settle it when all is done',
};

type Holdings = readonly HoldingOnDay[];
type Coming = readonly DeliveryRecord[];

/** What is to be collected first, then what can be booked, then what the secretary is to do. */
export async function dueOfDeliveries(
  context: ReadContext,
  holdings: Holdings,
  coming: Coming,
): Promise<DeliveryDue[]> {
  const collecting = coming.filter(({ state }) => state === 'shared' || state === 'collecting');
  const open = coming.filter(({ state }) => state === 'open');
  const ids = holdings.map(({ id }) => id);
  const bookings = await bookingsOfHoldings(context.db, context.scope, ids);
  const standing = (deliveryId: string, holdingId: string) =>
    bookings.get(deliveryId)?.find((booking) => booking.holdingId === holdingId);
  const collect = collecting.flatMap((delivery) =>
    ids.flatMap((holdingId): DeliveryDue[] => {
      const { share, collectedLoads } = standing(delivery.id, holdingId) ?? { share: 0, collectedLoads: 0 };
      const loads = (share ?? 0) - collectedLoads;
      const { id: deliveryId, name, loadUnit, collectByOn: by } = delivery;
      return loads > 0 ? [{ code: 'collect', deliveryId, name, loads, loadUnit, share: share ?? 0, by }] : [];
    }),
  );
  const book = await dueOfLorries(context, holdings, open, (...of) => standing(...of)?.asked ?? null);
  return [...collect, ...book, ...(canRunSociety(context.scope) ? coming.flatMap(stepOf) : [])];
}

// One lorry is one thing to do, whatever lies on it.
async function dueOfLorries(
  { db, scope, today }: ReadContext,
  holdings: Holdings,
  open: Coming,
  askedOf: (deliveryId: string, holdingId: string) => number | null,
): Promise<DeliveryDue[]> {
  const needs = new Map<string, ReadonlyMap<string, HoldingNeed>>();
  for (const delivery of open)
    needs.set(delivery.id, await needsForDelivery({ tx: db, scope, today }, delivery, holdings));
  const lorryOf = ({ id, togetherId }: DeliveryRecord) => togetherId ?? id;
  const lorries = [...new Set(open.map(lorryOf))].map((lorry) => open.filter((one) => lorryOf(one) === lorry));
  return lorries.flatMap((lorry) =>
    holdings.flatMap(({ id: holdingId }): DeliveryDue[] => {
      const loads = lorry.flatMap(({ id: deliveryId, name }): Bookable[] => {
        const need = needs.get(deliveryId)?.get(holdingId);
        return need ? [{ deliveryId, name, need, asked: askedOf(deliveryId, holdingId) }] : [];
      });
      const closesAt = new Date(Math.min(...lorry.map((one) => one.closesAt.getTime())));
      return loads.length ? [{ code: 'book', holdingId, closesAt, loads }] : [];
    }),
  );
}

// What is held waits for the decision, which stands by itself.
function stepOf({ id: deliveryId, name, state, held }: DeliveryRecord): DeliveryDue[] {
  const step = held && state === 'tipped' ? undefined : steps[state];
  return step ? [{ code: 'run', deliveryId, name, step }] : [];
}

/** The days of deliveries: booking closes, what was booked comes, what was shared out is to be collected by. */
export async function datesOfDeliveries(context: ReadContext, holdings: Holdings, coming: Coming): Promise<Dated[]> {
  const { db, scope } = context;
  const bookings = await bookingsOfHoldings(
    db,
    scope,
    holdings.map(({ id }) => id),
  );
  return coming.flatMap(({ id, name, state, closesAt, arrivesOn, collectByOn, loadUnit }): Dated[] => {
    const own = (bookings.get(id) ?? []).filter(({ withdrawn }) => !withdrawn);
    const left = own.reduce((sum, { share, collectedLoads }) => sum + Math.max(0, (share ?? 0) - collectedLoads), 0);
    const facts = { deliveryId: id, name, loadUnit };
    if (state === 'open' && holdings.length)
      return [
        dayOf(`booking ${id}`, 'booking-closes', dayIn(scope.timeZone, closesAt), facts),
        ...(own.length ? [dayOf(`delivery ${id}`, 'delivery-comes', arrivesOn, facts)] : []),
      ];
    if (state === 'closed' && own.length) return [dayOf(`delivery ${id}`, 'delivery-comes', arrivesOn, facts)];
    if (left > 0) return [dayOf(`collect ${id}`, 'collect-by', collectByOn, { ...facts, loads: left })];
    return [];
  });
}

function dayOf(key: string, code: string, on: CalendarDate, facts: Dated['facts']): Dated {
  return { key, code, from: on, to: on, facts };
}
