import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { Caution, Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { SoilCaution } from '@/app/_ui/trouble-words';
import { troubleName } from '@/lib/domain/catalogue/troubles';
import { formatArea } from '@/lib/domain/quantity/area';
import { readTroubles } from '@/lib/usecases/site/read-troubles';

export const metadata: Metadata = { title: 'Troubles found' };

export default async function TroublesPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { troubles, units } = await ask(readTroubles, society);
  return (
    <>
      <PageHead
        title="Troubles found in the ground"
        lead="Neighbours learn at most that there is one near them, and only where the society’s rules allow it."
      />
      <Sheet title="By the day they were found" flush wide>
        {troubles.length === 0 ? (
          <Empty>None is recorded. Holders record what they find on the bed’s own page; so can you, for them.</Empty>
        ) : null}
        <Table
          caption="Troubles found"
          columns={[
            { head: 'plot' },
            { head: 'bed' },
            { head: 'trouble' },
            { head: 'how sure' },
            { head: 'found' },
            { head: 'area', number: true },
            { head: 'clear years wanted', number: true },
          ]}
          rows={troubles.map(({ id, plots, beds, troubleKey, certainty, foundOn, areaCm2, breakYears }) => ({
            key: id,
            cells: [
              plots.join(', '),
              beds.map((bed, at) => (
                <span key={bed.id}>
                  {at ? ', ' : ''}
                  <Link href={`/${society}/ground/beds/${bed.id}`}>{bed.name}</Link>
                </span>
              )),
              troubleName(troubleKey),
              certainty,
              dayWords(foundOn),
              formatArea(areaCm2, units),
              breakYears ?? 'never clear',
            ],
          }))}
        />
      </Sheet>
      <div className="wide">
        <Caution>
          <SoilCaution />
        </Caution>
      </div>
    </>
  );
}
