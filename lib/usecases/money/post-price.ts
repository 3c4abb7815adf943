import 'server-only';
import { accountHolders } from '@/lib/data/account-holder';
import { postEntries } from '@/lib/data/ledger';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { chargeOf, purchaseOf } from '@/lib/domain/ledger/postings';
import { countOf } from '../deliveries/count-of';
import type { WriteContext } from '../operation';
import { tellEach } from '../tell';
import { type DeliverySplit, splitDelivery } from './split-delivery';

type Named = { readonly id: string; readonly name: string };

/**
 * Enter what a delivery cost: it is owed to whoever brought it, and charged by loads taken to those who took them. What
 * nobody took stays on the delivery's purchases. Whoever calls this holds the delivery's lock, and enters it once.
 *
 * @returns how it was split; null where it cost nothing, and nothing is entered
 */
export async function postPrice(
  { tx, scope, today, now, note }: Pick<WriteContext, 'tx' | 'scope' | 'today' | 'now' | 'note'>,
  { id, name }: Named,
  priceMinor: number,
): Promise<DeliverySplit | null> {
  if (priceMinor === 0) return null;
  const split = await splitDelivery(tx, scope, id, priceMinor);
  const charge = chargeOf(`purchases:${id}`, split.shares);
  const postings = [purchaseOf(id, priceMinor), ...(charge ? [charge] : [])];
  const common = { on: today, words: name, deliveryId: id };
  await postEntries(
    tx,
    scope,
    postings.map((posting) => ({ ...posting, ...common })),
    now,
  );
  const { shares, leftMinor, allLoads } = split;
  note({
    verb: 'charged',
    thing: 'delivery',
    thingId: id,
    after: { priceMinor, loads: allLoads, holdings: shares.length, leftMinor },
  });
  return split;
}

/** Tell the holders what they owe for their loads, in place of what they were told before or for the first time. */
export async function tellCharged(
  context: Pick<WriteContext, 'tx' | 'scope' | 'today'>,
  { name }: Named,
  split: DeliverySplit | null,
  isAnew = false,
): Promise<void> {
  if (!split) return;
  const charged = split.shares.filter(({ minor }) => minor > 0);
  const holdingIds = charged.map(({ holdingId }) => holdingId);
  const holders = await accountHolders(context.tx, context.scope, context.today, { holdingIds });
  const membersOf = new Map(holders.map(({ holdingId, memberIds }) => [holdingId, memberIds]));
  await tellEach(
    context,
    `what you owe for ${name}`,
    charged.map(({ holdingId, loads, minor }) => ({
      memberIds: membersOf.get(holdingId) ?? [],
      body:
        `Your ${countOf(loads, split.loadUnit)} of “${name}”: ${formatPounds(minor)}. ` +
        `${formatPounds(split.priceMinor)} are split by the ${countOf(split.allLoads, split.loadUnit)} that were taken, to the penny. ` +
        `${isAnew ? 'The price was put right, so this takes the place of what you were told before. ' : ''}` +
        // How to pay stands on the page and never in mail.
        'Sign in and open “Your account” to see why, and how to pay.',
    })),
  );
}
