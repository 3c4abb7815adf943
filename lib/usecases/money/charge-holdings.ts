import 'server-only';
import { holdingById, holdingsOn } from '@/lib/data/holding';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { chargeOf } from '@/lib/domain/ledger/postings';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { chargeInput } from '@/lib/schemas/money/ledger';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tellEach } from '../tell';
import { enter } from './enter';
import { openAccount, refuseDayToCome } from './open-account';

type Charged = { readonly holdingId: string; readonly memberIds: readonly string[]; readonly minor: number };

/** Charge one holding, or all of them, the same each or by their plots: seed, rents, a key. One entry for them all. */
export const chargeHoldings = mutation({
  name: 'charge-holdings',
  allow: canKeepMoney,
  input: chargeInput,
  write: async (context, { who, amount, on, account, words }) => {
    refuseDayToCome(context, on);
    await openAccount(context, account, 'account');
    // Bank and cash hold what was paid, and a holding pays no other.
    if (!account.startsWith('other:')) refuse('account-unknown', { field: 'account' });
    const charged = await chargedOf(context, who, amount, on);
    const posting = chargeOf(account, charged);
    if (!posting) refuse('nobody-to-charge', { field: 'who', numbers: { on } });
    const entryId = await enter(context, { ...posting, on, words });
    await tellEach(
      context,
      'a charge on your account',
      charged.map(({ memberIds, minor }) => ({
        memberIds,
        body: `${formatPounds(minor)} are charged to your holding’s account: ${words}. Sign in and open “Your account” to see it.`,
      })),
    );
    return { entryId, holdings: charged.length, minor: charged.reduce((sum, { minor }) => sum + minor, 0) };
  },
});

async function chargedOf(
  { tx, scope, today }: WriteContext,
  who: string,
  amount: number,
  on: CalendarDate,
): Promise<Charged[]> {
  if (who !== 'holdings' && who !== 'plots') {
    const holding = await holdingById(tx, scope, who, today);
    if (!holding) throw new NotFound();
    return [{ holdingId: holding.id, memberIds: holding.memberIds, minor: amount }];
  }
  const holdings = await holdingsOn(tx, scope, on);
  return holdings.map(({ id, memberIds, plots }) => ({
    holdingId: id,
    memberIds,
    minor: who === 'plots' ? amount * plots.length : amount,
  }));
}
