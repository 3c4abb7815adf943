import 'server-only';
import { z } from 'zod';
import { bookingsOfHoldings } from '@/lib/data/booking';
import { deliveriesOf } from '@/lib/data/delivery';
import { holdingsOfMember } from '@/lib/data/holding';
import {
  changeStandingTo,
  createStanding,
  endStandingAt,
  lockStanding,
  standingBookings,
  type StandingRecord,
} from '@/lib/data/standing-booking';
import { standsFor } from '@/lib/domain/delivery/standing';
import { canBook, othersOf } from '@/lib/domain/policy/holding';
import { canEnter } from '@/lib/domain/policy/standing';
import { changeStandingInput, endStandingInput, startStandingInput } from '@/lib/schemas/deliveries/standing';
import { mutation, query, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';
import { openBookable } from './open-bookable';

async function ownStanding(context: WriteContext, standingId: string) {
  const standing = await lockStanding(context.tx, context.scope, standingId);
  if (!standing) throw new NotFound();
  return { standing, holding: await openBookable(context, standing.holdingId) };
}

type Told = { readonly verb: string; readonly standingId: string; readonly facts: object };

async function noteAndTell(
  context: WriteContext,
  holding: Awaited<ReturnType<typeof openBookable>>,
  { verb, standingId, facts }: Told,
): Promise<void> {
  const { scope, note } = context;
  note({ verb, thing: 'standing booking', thingId: standingId, forHoldingId: holding.id, after: { ...facts } });
  await tell(
    context,
    othersOf(holding, scope.memberId),
    'a standing booking for your ground',
    `${scope.memberName} has ${verb} a standing booking of your holding. Sign in and see under Deliveries.`,
  );
}

/** Say once that every delivery of a kind is to be booked as the ground needs it. */
export const startStanding = mutation({
  name: 'start-standing-booking',
  allow: canEnter,
  input: startStandingInput,
  // Two holders at once: one of them is refused, as if they had come one after the other.
  isolation: 'Serializable',
  write: async (context, { holdingId, serves, when: autumnOnly, mostLoads }) => {
    const { tx, scope, now } = context;
    const holding = await openBookable(context, holdingId);
    const stands = await standingBookings(tx, scope, [holdingId]);
    if (stands.some((one) => one.serves === serves)) refuse('stands-already', { field: 'serves' });
    const facts = { serves, autumnOnly, mostLoads };
    const standingId = await createStanding(tx, scope, { ...facts, holdingId, at: now });
    await noteAndTell(context, holding, { verb: 'started', standingId, facts });
    return { standingId };
  },
});

/** Change when a standing booking books, and its limit. What it has booked stays. */
export const changeStanding = mutation({
  name: 'change-standing-booking',
  allow: canEnter,
  input: changeStandingInput,
  write: async (context, { standingId, when: autumnOnly, mostLoads }) => {
    const { holding } = await ownStanding(context, standingId);
    const facts = { autumnOnly, mostLoads };
    await changeStandingTo(context.tx, context.scope, standingId, facts);
    await noteAndTell(context, holding, { verb: 'changed', standingId, facts });
    return { standingId };
  },
});

/** End a standing booking. What it has booked stays, and is withdrawn by itself. */
export const endStanding = mutation({
  name: 'end-standing-booking',
  allow: canEnter,
  input: endStandingInput,
  write: async (context, { standingId }) => {
    const { holding, standing } = await ownStanding(context, standingId);
    await endStandingAt(context.tx, context.scope, standingId, context.now);
    await noteAndTell(context, holding, { verb: 'ended', standingId, facts: { serves: standing.serves } });
    return { standingId };
  },
});

/** The viewer's holdings with their standing bookings, and what each booked last. */
export const readStandingBookings = query({
  name: 'read-standing-bookings',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, now, today }) => {
    const holdings = (await holdingsOfMember(db, scope, scope.memberId, today)).filter(({ plots }) => plots.length);
    const ids = holdings.map(({ id }) => id);
    const [standing, bookings, deliveries] = await Promise.all([
      standingBookings(db, scope, ids),
      bookingsOfHoldings(db, scope, ids),
      deliveriesOf(db, scope, now),
    ]);
    const lastOf = ({ holdingId, serves }: StandingRecord) => {
      const mine = deliveries.flatMap((delivery) => {
        const booking = bookings.get(delivery.id)?.find((one) => one.holdingId === holdingId && one.fromStanding);
        const fits = booking && standsFor({ serves, autumnOnly: false }, delivery);
        return fits
          ? [
              {
                deliveryId: delivery.id,
                name: delivery.name,
                loadUnit: delivery.loadUnit,
                asked: booking.asked,
                share: booking.share,
              },
            ]
          : [];
      });
      return mine[0] ?? null;
    };
    return holdings.map((holding) => ({
      holding,
      mayBook: canBook(scope, holding),
      standing: standing
        .filter(({ holdingId }) => holdingId === holding.id)
        .map((one) => ({ ...one, last: lastOf(one) })),
    }));
  },
});
