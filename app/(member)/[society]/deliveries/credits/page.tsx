import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { readCredits } from '@/lib/usecases/deliveries/read-credits';
import { creditWords } from '@/app/_ui/delivery-words';
import { OwnCredits } from './_parts/own-credits';

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
      {materials.map(({ key, name, rows, own, largestMillionths, lapsedMillionths, sumMillionths }) => (
        <Sheet
          key={key}
          title={name}
          flush
          aside={<span className="soft">largest {creditWords(largestMillionths)}</span>}
        >
          <Table
            caption={`Credits of ${name}`}
            columns={[{ head: 'plot' }, { head: 'loads', number: true }]}
            rows={[
              ...rows.map(({ id, plots, mine, millionths }) => ({
                key: id,
                mine,
                cells: [plots.join(', ') || 'a former holding', creditWords(millionths)],
              })),
              { key: 'lapsed', cells: ['lapsed with former holdings', creditWords(lapsedMillionths)] },
            ]}
            foot={['all together', creditWords(sumMillionths)]}
          />
          {own.length ? (
            <div className="sheet-body">
              <Reason ask="How yours came about">
                <OwnCredits society={society} material={name} entries={own} />
              </Reason>
            </div>
          ) : null}
        </Sheet>
      ))}
    </>
  );
}
