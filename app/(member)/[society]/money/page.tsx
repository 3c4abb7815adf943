import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { DaysForm } from '@/app/_ui/days-form';
import { balanceWords } from '@/app/_ui/money-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { StatementTable } from '@/app/_ui/statement-table';
import { readOwnAccounts } from '@/lib/usecases/money/read-account';

export const metadata: Metadata = { title: 'Your account' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ from?: string; to?: string }> };

export default async function AccountPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { accounts, from, to, payNote } = await ask(readOwnAccounts, society, await searchParams);
  const owed = accounts.reduce((sum, { balanceMinor }) => sum + balanceMinor, 0);
  return (
    <>
      <PageHead
        title="Your account"
        lead={accounts.length ? `${balanceWords(owed)}. Every line says what it is for.` : 'You hold no plot.'}
      />
      {accounts.length === 0 ? (
        <Empty>An account begins with a plot. Loads that you take of a delivery are then charged here, and why.</Empty>
      ) : null}
      {accounts.length && payNote ? (
        <Sheet title="How to pay">
          <p style={{ whiteSpace: 'pre-line' }}>{payNote}</p>
        </Sheet>
      ) : null}
      {accounts.length ? <DaysForm from={from} to={to} /> : null}
      {accounts.map(({ holder, balanceMinor, statement }) => {
        const { holdingId, plots, endedOn } = holder;
        const span = `from=${from}&to=${to}`;
        const name = plots.length ? `plot ${plots.join(', ')}` : 'no plot';
        return (
          <Sheet
            key={holdingId}
            title={`${balanceWords(balanceMinor)}`}
            aside={<span className="soft">{`${name}${endedOn ? ', given up' : ''}`}</span>}
            flush
            wide
          >
            {statement.lines.length === 0 ? (
              <Empty>
                Nothing was charged or paid in these days. Your part of a delivery’s price is charged when it is
                settled.
              </Empty>
            ) : null}
            <StatementTable caption={`Account of ${name}`} statement={statement} />
            <p className="actions sheet-body">
              <Link className="button" href={`/${society}/money/${holdingId}/print?${span}`}>
                Statement to print
              </Link>
              <a className="button" href={`/api/money/${society}?what=account&holdingId=${holdingId}&${span}`}>
                As CSV
              </a>
            </p>
          </Sheet>
        );
      })}
    </>
  );
}
