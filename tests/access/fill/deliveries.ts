import { bookLoads, offerToUnload } from '@/lib/usecases/deliveries/book-loads';
import { enterBeyond, giveUp, tickOff } from '@/lib/usecases/deliveries/collect';
import { holdDelivery } from '@/lib/usecases/deliveries/hold-delivery';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap } from '@/lib/usecases/deliveries/share-out';
import { deliveryFacts, done, once } from '../../fixtures/society';
import type { Ids } from '../row';
import type { Ground } from './ground';
import type { Members, Word } from './members';

type DeliveryIds = Pick<Ids, DeliveryId | 'bookingId'>;
type DeliveryId =
  | 'plannedId'
  | 'openId'
  | 'closedId'
  | 'tippedId'
  | 'sharedId'
  | 'collectedId'
  | 'settledId'
  | 'leftOverId';

const noDeliveries = {
  ...{ plannedId: '', openId: '', closedId: '', tippedId: '', sharedId: '', collectedId: '' },
  ...{ settledId: '', leftOverId: '', bookingId: '' },
};

/** Deliveries in the states that are wanted, or in each, of materials that do not wait for each other. */
export async function makeDeliveries(
  word: Word,
  { holder, neighbour, ...members }: Members,
  ground: Ground,
  wanted?: readonly string[],
): Promise<DeliveryIds> {
  const secretary = members.secretary.caller;
  const plan = async (state: string, materialKey: string, densityGPerL: string) => {
    const texts = {
      supplier: word(`${state} supplier`),
      dropPoint: word('drop point'),
      gateNote: word(`${state} gate`),
    };
    const facts = { name: word(state), materialKey, price: '12', densityGPerL, keyHolderId: neighbour.id, ...texts };
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
  const makers: Readonly<Record<DeliveryId, () => Promise<{ deliveryId: string; bookingId?: string }>>> = {
    plannedId: async () => ({ deliveryId: await plan('planned', 'horse-manure', '400') }),
    openId: async () => {
      const { deliveryId } = await open('open', 'horse-manure', '400');
      await done(offerToUnload.run(neighbour.caller, once({ deliveryId, offers: 'yes' })));
      return { deliveryId };
    },
    closedId: async () => {
      const { deliveryId } = await close('closed', 'cattle-manure', '750');
      await done(holdDelivery.run(secretary, once({ deliveryId, reason: word('held because') })));
      return { deliveryId };
    },
    tippedId: () => tip('tipped', 'mixed-manure', '600'),
    sharedId: async () => {
      const made = await share('shared', 'horse-manure', '400');
      await done(
        tickOff.run(holder.caller, once({ deliveryId: made.deliveryId, bookingId: made.bookingId, loads: '1' })),
      );
      return made;
    },
    collectedId: async () => {
      const { otherBookingId, ...made } = await share('collected', 'green-compost', '500');
      const others = { deliveryId: made.deliveryId, bookingId: otherBookingId };
      await done(tickOff.run(holder.caller, once({ ...made, loads: '3' })));
      await done(tickOff.run(neighbour.caller, once({ ...others, loads: '2' })));
      await done(enterBeyond.run(secretary, once({ ...others, loads: '1', reason: word('reason') })));
      return { deliveryId: made.deliveryId };
    },
    settledId: async () => {
      const { deliveryId, bookingId, otherBookingId } = await share('settled', 'wood-chip', '300');
      await done(tickOff.run(holder.caller, once({ deliveryId, bookingId, loads: '3' })));
      await done(tickOff.run(neighbour.caller, once({ deliveryId, bookingId: otherBookingId, loads: '2' })));
      await done(settleDelivery.run(secretary, once({ deliveryId })));
      return { deliveryId };
    },
    leftOverId: async () => {
      const { deliveryId, bookingId, otherBookingId } = await share('left over', 'hen-manure', '800');
      for (const id of [bookingId, otherBookingId])
        await done(giveUp.run(secretary, once({ deliveryId, bookingId: id })));
      await done(settleDelivery.run(secretary, once({ deliveryId })));
      return { deliveryId };
    },
  };
  const ids = { ...noDeliveries };
  for (const [key, make] of Object.entries(makers)) {
    // A residue test is of the one that is open.
    const isWanted = wanted?.some((one) => one === key || (one === 'testId' && key === 'openId')) ?? true;
    if (!isWanted) continue;
    const { deliveryId, bookingId } = await make();
    Object.assign(ids, { [key]: deliveryId }, key === 'sharedId' ? { bookingId } : {});
  }
  return ids;
}
