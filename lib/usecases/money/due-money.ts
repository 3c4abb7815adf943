import 'server-only';
import { accountHolders } from '@/lib/data/account-holder';
import { balancesOn } from '@/lib/data/ledger-sums';
import type { Account } from '@/lib/domain/ledger/account';
import type { ReadContext } from '../operation';

/** What a holding of the viewer's owes the society. */
export type OwesDue = {
  readonly code: 'owes';
  readonly holdingId: string;
  readonly plots: readonly string[];
  readonly minor: number;
};

/** What the viewer's holdings owe, also those that ended while they held them. */
export async function dueOfMoney({ db, scope, today }: ReadContext): Promise<OwesDue[]> {
  const holders = await accountHolders(db, scope, today, { memberId: scope.memberId });
  const accountOf = (holdingId: string): Account => `holding:${holdingId}`;
  const balances = await balancesOn(
    db,
    scope,
    holders.map(({ holdingId }) => accountOf(holdingId)),
  );
  return holders
    .map(({ holdingId, plots }) => ({ holdingId, plots, minor: balances.get(accountOf(holdingId)) ?? 0 }))
    .filter(({ minor }) => minor > 0)
    .map((one) => ({ code: 'owes', ...one }));
}
