import { type Choice, TextField } from '@/app/_ui/field';
import { accountWords } from '@/app/_ui/money-words';
import { builtInAccounts } from '@/lib/domain/ledger/own-accounts';
import type { readLedgerForms } from '@/lib/usecases/money/read-money';

type Forms = Awaited<ReturnType<typeof readLedgerForms.run>>;

export const bankOrCash: readonly Choice[] = [
  { value: 'bank', label: 'bank' },
  { value: 'cash', label: 'cash' },
];

/** An amount as people type it, in pounds. */
export function AmountField({ label = 'Amount' }: { label?: string }) {
  return <TextField name="amount" label={label} inputMode="decimal" suffix="£" className="short-field" />;
}

export function DayField({ today }: { today: string }) {
  return <TextField name="on" type="date" label="On" value={today} />;
}

/** Holdings by their plots; those that were given up stay, since their accounts do. */
export function holdingChoices(holders: Forms['holders'], before = ''): Choice[] {
  return holders.map(({ holdingId, plots, members, endedOn }) => ({
    value: `${before}${holdingId}`,
    label: `${plots.join(', ') || 'no plot'}: ${members.map(({ name }) => name).join(' and ')}${endedOn ? ' (given up)' : ''}`,
    ...(before ? { group: 'holdings' } : {}),
  }));
}

/** The accounts that the society keeps apart and that take entries. */
export function ownChoices(own: Forms['own']): Choice[] {
  return [
    ...own.filter(({ isRetired }) => !isRetired).map(({ key, name }) => ({ value: `other:${key}`, label: name })),
    ...builtInAccounts.map((account) => ({ value: account, label: accountWords(account, null) })),
  ];
}
