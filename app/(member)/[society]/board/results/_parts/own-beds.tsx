import Link from 'next/link';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { yieldUnit } from '@/app/_ui/yield-words';
import type { Units } from '@/lib/domain/quantity/length';
import type { Results } from '@/lib/usecases/notes/results-of';
import { groupWords, questionWords, yieldFigure } from '../../_parts/results-words';

/** The reader’s own beds, by name; nobody else sees them so. */
export function OwnBeds({ results, units, society }: { results: Results; units: Units; society: string }) {
  const { own, crop, question, season } = results;
  return (
    <Sheet title="Your own beds" flush>
      {own.length === 0 ? (
        <Empty>
          You have no finished harvest of {crop.name.toLocaleLowerCase('en-GB')}
          {season === null ? '' : ` of ${season}`} on record.{' '}
          <Link href={`/${society}/ground/harvests`}>Log a harvest</Link>, and your bed stands here beside your
          neighbours’.
        </Empty>
      ) : (
        <Table
          caption="Your own beds"
          columns={[
            { head: 'bed' },
            { head: yieldUnit(units), number: true },
            { head: questionWords[question] },
            { head: 'compared' },
          ]}
          rows={own.map(({ plantingId, bedName, plotNumber, variety, season: year, gPerM2, isShared, group }) => ({
            key: `${plantingId} ${year}`,
            mine: true,
            cells: [
              `bed ${bedName}, plot ${plotNumber}${variety ? `: ${variety}` : ''}`,
              yieldFigure(gPerM2, units),
              group === null ? 'not known' : question === 'variety' ? variety : groupWords(question, group, results),
              isShared ? 'yes' : 'no, seen by you alone',
            ],
          }))}
        />
      )}
    </Sheet>
  );
}
