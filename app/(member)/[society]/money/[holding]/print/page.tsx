import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { standsWords } from '@/app/_ui/money-words';
import { PrintButton } from '@/app/_ui/print-button';
import { PageHead } from '@/app/_ui/sheet';
import { StatementTable } from '@/app/_ui/statement-table';
import { readAccount } from '@/lib/usecases/money/read-account';

export const metadata: Metadata = { title: 'Statement to print' };

type Props = {
  params: Promise<{ society: string; holding: string }>;
  searchParams: Promise<{ from?: string; to?: string }>;
};

export default async function StatementPage({ params, searchParams }: Props) {
  const { society, holding: holdingId } = await params;
  const read = await ask(readAccount, society, { holdingId, ...(await searchParams) });
  const { holder, statement, balanceMinor, societyName, today, payNote } = read;
  const { plots, members } = holder;
  return (
    <>
      <PageHead
        title={`${societyName}: statement of ${plots.length ? `plot ${plots.join(', ')}` : 'a holding with no plot'}`}
        lead={`${members.map(({ name }) => name).join(' and ')}. ${dayWords(statement.from)} to ${dayWords(statement.to)}. On ${dayWords(today)}: ${standsWords(balanceMinor)}.`}
      />
      <p className="wide no-print">
        <PrintButton>Print on A4</PrintButton>
      </p>
      <div className="wide paper">
        <StatementTable caption="Statement" statement={statement} plain />
        {payNote ? <p style={{ whiteSpace: 'pre-line', marginTop: '1rem' }}>{payNote}</p> : null}
      </div>
    </>
  );
}
