import 'server-only';
import { holdingById } from '@/lib/data/holding';
import { holdingOf } from '@/lib/data/ledger';
import { lockOwnAccount } from '@/lib/data/own-account';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type Account, accountKind } from '@/lib/domain/ledger/account';
import { builtInAccounts } from '@/lib/domain/ledger/own-accounts';
import { rowId } from '@/lib/schemas/write';
import type { WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';

/** See that an account is there and takes entries; one of the society's own stays so until the transaction ends. */
export async function openAccount(
  { tx, scope, today }: Pick<WriteContext, 'tx' | 'scope' | 'today'>,
  account: Account,
  field: string,
): Promise<void> {
  const kind = accountKind(account);
  if (kind === 'bank' || kind === 'cash' || builtInAccounts.some((one) => one === account)) return;
  if (kind === 'holding') {
    const id = rowId.safeParse(holdingOf(account));
    if (!id.success || !(await holdingById(tx, scope, id.data, today))) throw new NotFound();
    return;
  }
  // What stands on a delivery's purchases is its price, and changes on the delivery's own page alone.
  if (kind === 'purchases') refuse('account-unknown', { field });
  const own = await lockOwnAccount(tx, scope, { key: account.slice('other:'.length) }, 'share');
  if (!own) refuse('account-unknown', { field });
  if (own.isRetired) refuse('account-retired', { field, numbers: { name: own.name } });
}

/** Money is entered once it has moved: on a day to come nothing has. */
export function refuseDayToCome({ today }: Pick<WriteContext, 'today'>, on: CalendarDate): void {
  if (on > today) refuse('day-to-come', { field: 'on', numbers: { today } });
}
