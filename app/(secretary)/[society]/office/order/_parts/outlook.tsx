import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { massBetween, type Order } from './order-words';

/** This season and the next three, to talk with a supplier about. */
export function Outlook({ read: { outlook, units, material } }: { read: Order }) {
  return (
    <Sheet title="This season and the next three" flush>
      <Table
        caption="What is wanted, season by season"
        columns={[
          { head: 'season' },
          { head: 'need', number: true },
          { head: 'there or coming', number: true },
          { head: 'still wanted', number: true },
        ]}
        rows={outlook.map(({ season, needG, leftLeastG, leftMostG, onOrderG, wanted }) => ({
          key: String(season),
          cells: [
            season,
            formatMassIn(needG, units),
            massBetween(leftLeastG + onOrderG, leftMostG + onOrderG, units),
            massBetween(wanted.leastG, wanted.mostG, units),
          ],
        }))}
      />
      <div className="sheet-body">
        <p className="small">
          Reckoned as {material.name.toLowerCase()}. For the years to come it is taken that what is due is manured in
          its year; plans are those on the board.
        </p>
      </div>
    </Sheet>
  );
}
