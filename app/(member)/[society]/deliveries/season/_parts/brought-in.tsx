import { dayWords, stateWords } from '@/app/_ui/delivery-words';
import { Table } from '@/app/_ui/table';
import type { SeasonPart } from '@/lib/usecases/season/season-paper';

/** What came, what was shared and collected of it, and what was left lying. */
export function BroughtIn({ part: { deliveries, total, unit } }: { part: SeasonPart }) {
  const number = true;
  return (
    <Table
      caption={unit === 'bale' ? 'Bales by delivery' : 'Loads by delivery'}
      columns={[
        { head: 'delivery' },
        { head: 'ordered', number },
        { head: 'measured', number },
        { head: 'shared', number },
        { head: 'collected', number },
        { head: 'of it beyond share', number },
        { head: 'given up', number },
        { head: 'left', number },
      ]}
      rows={deliveries.map((one) => ({
        key: one.id,
        cells: [
          <div key="what">
            {one.name}
            <div className="small soft">
              {one.material}, {one.arrivesOn ? dayWords(one.arrivesOn) : ''}
              {one.state && one.state !== 'settled' ? `; ${stateWords(one.state)}` : ''}
            </div>
          </div>,
          one.orderedLoads,
          one.heapLoads ?? 'not yet',
          one.share,
          one.collected,
          one.beyond,
          one.givenUp,
          one.leftLoads ?? '–',
        ],
      }))}
      foot={[
        'in all',
        total.orderedLoads,
        total.heapLoads,
        total.share,
        total.collected,
        total.beyond,
        total.givenUp,
        total.leftLoads,
      ]}
    />
  );
}
