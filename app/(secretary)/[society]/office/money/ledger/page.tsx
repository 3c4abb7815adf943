import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { SelectField, TextField } from '@/app/_ui/field';
import { accountWords, kindWords } from '@/app/_ui/money-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { isAccount } from '@/lib/domain/ledger/account';
import { builtInAccounts } from '@/lib/domain/ledger/own-accounts';
import { readLedger } from '@/lib/usecases/money/read-ledger';
import { EntriesTable } from '../_parts/entries-table';

export const metadata: Metadata = { title: 'The ledger' };

type Search = { from?: string; to?: string; account?: string; kind?: string; page?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function LedgerPage({ params, searchParams }: Props) {
  const { society } = await params;
  const search = await searchParams;
  const { entries, count, names, page, pages } = await ask(readLedger, society, search);
  const asked = new URLSearchParams({ ...search, what: 'ledger' });
  const pageLink = (to: number) => `?${new URLSearchParams({ ...search, page: String(to) })}`;
  const accounts = ['bank', 'cash', ...builtInAccounts, ...Object.keys(names)].filter(isAccount);
  return (
    <>
      <PageHead
        title="The ledger"
        lead={`${count.toLocaleString('en-GB')} ${count === 1 ? 'entry' : 'entries'}. Each sums to nothing; none is ever altered or removed.`}
      >
        <Link className="button" href={`/${society}/office/money`}>
          Balances
        </Link>
        <a className="button" href={`/api/money/${society}?${asked}`}>
          These as CSV
        </a>
      </PageHead>
      <form className="row wide" method="get">
        <SelectField
          name="account"
          label="Account"
          empty="every account"
          value={search.account ?? ''}
          choices={accounts.map((account) => ({ value: account, label: accountWords(account, names[account]) }))}
        />
        <SelectField
          name="kind"
          label="Kind"
          empty="every kind"
          value={search.kind ?? ''}
          choices={Object.entries(kindWords).map(([value, label]) => ({ value, label }))}
          className="short-field"
        />
        <TextField name="from" type="date" label="From" value={search.from} />
        <TextField name="to" type="date" label="To" value={search.to} />
        <button type="submit" className="button">
          Show
        </button>
      </form>
      <Sheet
        title="By day, the newest first"
        flush
        wide
        aside={
          pages > 1 ? (
            <span className="soft">
              page {page + 1} of {pages}
            </span>
          ) : null
        }
      >
        {entries.length === 0 ? (
          <Empty>Nothing is entered here. Widen the days, choose every account, or enter a payment.</Empty>
        ) : null}
        <EntriesTable society={society} entries={entries} names={names} />
      </Sheet>
      <p className="wide row">
        {page > 0 ? (
          <Link className="button" href={pageLink(page - 1)}>
            Newer
          </Link>
        ) : null}
        {page + 1 < pages ? (
          <Link className="button" href={pageLink(page + 1)}>
            Older
          </Link>
        ) : null}
      </p>
    </>
  );
}
