import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { DaysForm } from '@/app/_ui/days-form';
import { standsWords } from '@/app/_ui/money-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { StatementTable } from '@/app/_ui/statement-table';
import { readAccount } from '@/lib/usecases/money/read-account';

export const metadata: Metadata = { title: 'A holding’s account' };

type Props = {
  params: Promise<{ society: string; holding: string }>;
  searchParams: Promise<{ from?: string; to?: string }>;
};

export default async function HoldingAccountPage({ params, searchParams }: Props) {
  const { society, holding: holdingId } = await params;
  const read = await ask(readAccount, society, { holdingId, ...(await searchParams) });
  const { holder, statement, balanceMinor, keeps } = read;
  const { plots, members, endedOn } = holder;
  const span = `from=${statement.from}&to=${statement.to}`;
  const room = `/${society}/office/money`;
  return (
    <>
      <PageHead
        title={plots.length ? `Plot ${plots.join(', ')}` : 'A holding with no plot'}
        lead={`${members.map(({ name }) => name).join(' and ')}${endedOn ? ', given up' : ''}: ${standsWords(balanceMinor)}.`}
      >
        {keeps ? (
          <Link className="button first" href={`${room}/enter?holding=${holdingId}`}>
            Enter a payment
          </Link>
        ) : null}
        <Link className="button" href={`${room}/ledger?account=${encodeURIComponent(`holding:${holdingId}`)}`}>
          Its entries, to correct one
        </Link>
        <Link className="button" href={`/${society}/money/${holdingId}/print?${span}`}>
          Statement to print
        </Link>
        <a className="button" href={`/api/money/${society}?what=account&holdingId=${holdingId}&${span}`}>
          As CSV
        </a>
      </PageHead>
      <DaysForm from={statement.from} to={statement.to} />
      <Sheet title="Statement" flush wide>
        {statement.lines.length === 0 ? <Empty>Nothing was charged or paid in these days. Widen them.</Empty> : null}
        <StatementTable caption="Statement" statement={statement} />
      </Sheet>
    </>
  );
}
