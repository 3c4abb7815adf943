import { accountWords } from '@/app/_ui/money-words';
import { Reason } from '@/app/_ui/sheet';
import type { Account } from '@/lib/domain/ledger/account';
import { formatPounds } from '@/lib/domain/ledger/pounds';

type Line = { readonly account: Account; readonly minor: number };

/** The lines of an entry, so much on to this account and off that; one of many holdings is folded away. */
export function EntryLines({ lines, names }: { lines: readonly Line[]; names: Readonly<Record<string, string>> }) {
  const list = (
    <ul className="plain-list small">
      {lines.map(({ account, minor }) => (
        <li key={account} style={{ marginTop: 0 }}>
          {accountWords(account, names[account])}: {minor > 0 ? '+' : ''}
          {formatPounds(minor)}
        </li>
      ))}
    </ul>
  );
  return lines.length > 4 ? <Reason ask={`${lines.length} lines`}>{list}</Reason> : list;
}

/** What an entry moves in all. */
export function amountOf(lines: readonly Line[]): string {
  return formatPounds(lines.reduce((sum, { minor }) => sum + Math.max(0, minor), 0));
}
