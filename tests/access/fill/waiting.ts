import { bookLate } from '@/lib/usecases/deliveries/book-late';
import { closeDelivery, openDelivery, planDelivery } from '@/lib/usecases/deliveries/plan-delivery';
import { startStanding } from '@/lib/usecases/deliveries/standing-bookings';
import { deliveryFacts, done, once } from '../../fixtures/society';
import type { Ground } from './ground';
import type { Members, Word } from './members';

/** A delivery that nobody booked in time, with the holder on its waiting list; and a standing booking of theirs. */
export async function makeWaiting(
  word: Word,
  { secretary, holder }: Members,
  { ids: { holdingId } }: Ground,
  wanted?: readonly string[],
) {
  const waitingId = (wanted?.includes('waitingId') ?? true) ? await makeList() : '';
  const standing = { holdingId, serves: 'manure', when: 'always', mostLoads: '4' };
  const { standingId } = await done(startStanding.run(holder.caller, once(standing)));
  return { waitingId, standingId };

  async function makeList(): Promise<string> {
    const facts = deliveryFacts({ name: word('waiting'), materialKey: 'wood-chip', densityGPerL: '300' });
    const { deliveryId } = await done(planDelivery.run(secretary.caller, once(facts)));
    await done(openDelivery.run(secretary.caller, once({ deliveryId })));
    await done(closeDelivery.run(secretary.caller, once({ deliveryId })));
    await done(bookLate.run(holder.caller, once({ deliveryId, holdingId, asked: '3' })));
    return deliveryId;
  }
}
