import 'server-only';
import type { DeliveryRecord } from '@/lib/data/delivery';
import { holdingsOn } from '@/lib/data/holding';
import type { WriteContext } from '../operation';
import { tell } from '../tell';
import type { Risen } from './share-out';

/** Tell those who have more now than before: next in the queue, or first on the waiting list. */
export async function tellRisen(
  context: WriteContext,
  { name, collectByOn }: DeliveryRecord,
  risen: readonly Risen[],
): Promise<void> {
  if (risen.length === 0) return;
  const { tx, scope, today } = context;
  const holdings = new Map((await holdingsOn(tx, scope, today)).map((holding) => [holding.id, holding]));
  for (const { holdingId, from, to } of risen)
    await tell(
      context,
      holdings.get(holdingId)?.memberIds ?? [],
      `${name}: more for you`,
      `Loads of “${name}” were given up, and you are next: your share is now ${to} (it was ${from}). Collect by ${collectByOn}; what you do not want, give up, and it goes to whoever comes after you.`,
    );
}
