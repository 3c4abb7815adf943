import Link from 'next/link';
import { dayWords, stateWords } from '@/app/_ui/delivery-words';
import { Empty, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { massBetween, type Order } from './order-words';

/** What is on order for the season, and what each delivery leaves short once it has come. */
export function Planned({ society, read: { planned, season, units, isStraw } }: { society: string; read: Order }) {
  return (
    <Sheet title={`On order for ${season}`} flush>
      {planned.length === 0 ? (
        <div className="sheet-body">
          <Empty>
            No {isStraw ? 'straw' : 'manure'} is on order for this season. Plan some from a supplier’s loads.
          </Empty>
        </div>
      ) : null}
      <Table
        caption={`What each delivery for ${season} leaves short`}
        columns={[{ head: 'delivery' }, { head: 'brings', number: true }, { head: 'then still short', number: true }]}
        rows={planned.map(({ id, name, state, arrivesOn, material, massG, short }) => ({
          key: id,
          cells: [
            <div key="name" style={{ minWidth: '9rem' }}>
              <Link href={`/${society}/office/deliveries/${id}`}>{name}</Link>
              <div className="small soft">
                {material}, {dayWords(arrivesOn)}, {stateWords(state)}
              </div>
            </div>,
            formatMassIn(massG, units),
            short.mostG === 0 ? 'nothing' : massBetween(short.leastG, short.mostG, units),
          ],
        }))}
      />
    </Sheet>
  );
}
