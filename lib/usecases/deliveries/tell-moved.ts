import 'server-only';
import type { DeliveryRecord } from '@/lib/data/delivery';
import { holdingsOn } from '@/lib/data/holding';
import type { WriteContext } from '../operation';
import { tell } from '../tell';
import type { Moved } from './share-out';

/** Tell those whose share is another now: next in the queue, or with somebody behind them on the waiting list. */
export async function tellMoved(
  context: WriteContext,
  { name, collectByOn }: DeliveryRecord,
  moved: readonly Moved[],
): Promise<void> {
  if (moved.length === 0) return;
  const { tx, scope, today } = context;
  const holdings = new Map((await holdingsOn(tx, scope, today)).map((holding) => [holding.id, holding]));
  for (const { holdingId, from, to } of moved) {
    const memberIds = holdings.get(holdingId)?.memberIds ?? [];
    const now = `your share is now ${to} (it was ${from})`;
    if (to > from)
      await tell(
        context,
        memberIds,
        `${name}: more for you`,
        `Loads of “${name}” were given up, and you are next: ${now}. Collect by ${collectByOn}; what you do not want, give up, and it goes to whoever comes after you.`,
      );
    else
      await tell(
        context,
        memberIds,
        `${name}: less for you`,
        `Somebody else came on to the waiting list of “${name}”, and what is left over goes round it load by load: ${now}.`,
      );
  }
}
