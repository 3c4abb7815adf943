import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readCredits } from '@/lib/usecases/deliveries/read-deliveries';
import { creditWords } from '@/app/_ui/delivery-words';

export const metadata: Metadata = { title: 'Credits' };

export default async function CreditsPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const materials = await ask(readCredits, society);
  return (
    <>
      <PageHead
        title="Credits"
        lead="What each holding is owed from the last, partial rounds of past deliveries, in loads. Together they are always zero. Credit waits while nothing is asked."
      />
      {materials.length === 0 ? <Empty>No delivery has been settled yet, so nobody is owed anything.</Empty> : null}
      {materials.map(({ key, name, rows }) => (
        <Sheet
          key={key}
          title={name}
          flush
          aside={<span className="soft">largest {creditWords(rows[0]?.millionths ?? 0)}</span>}
        >
          <Table
            caption={`Credits of ${name}`}
            columns={[{ head: 'plot' }, { head: 'loads', number: true }]}
            rows={rows.map(({ plots, millionths }) => ({ key: plots, cells: [plots, creditWords(millionths)] }))}
          />
        </Sheet>
      ))}
    </>
  );
}
