import 'server-only';
import { accountHolders } from '@/lib/data/account-holder';
import { deliveriesOf } from '@/lib/data/delivery';
import { ownAccountsOf } from '@/lib/data/own-account';
import type { ReadContext } from '../operation';

/** What accounts are called: a holding's by its plots, purchases by their delivery, the society's own by their names. */
export type AccountNames = Readonly<Record<string, string>>;

export async function accountNames({ db, scope, today, now }: ReadContext): Promise<AccountNames> {
  const [holders, deliveries, own] = await Promise.all([
    accountHolders(db, scope, today),
    deliveriesOf(db, scope, now),
    ownAccountsOf(db, scope),
  ]);
  return Object.fromEntries([
    ...holders.map(({ holdingId, plots }) => [`holding:${holdingId}`, plots.join(', ')]),
    ...deliveries.map(({ id, name }) => [`purchases:${id}`, name]),
    ...own.map(({ key, name }) => [`other:${key}`, name]),
  ]);
}
