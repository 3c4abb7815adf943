import { Table } from '@/app/_ui/table';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import type { SeasonPart } from '@/lib/usecases/season/season-paper';

/** The price of each delivery, what was charged on of it, and what of that is paid. */
export function MoneyOfSeason({ part: { deliveries, total, unit } }: { part: SeasonPart }) {
  const number = true;
  const cellsOf = (one: SeasonPart['total'] | SeasonPart['deliveries'][number]) =>
    [one.priceMinor, one.chargedMinor, one.priceMinor - one.chargedMinor, one.paidMinor, one.outstandingMinor].map(
      formatPounds,
    );
  return (
    <Table
      caption={`Money by delivery${unit === 'bale' ? ', bales' : ''}`}
      columns={[
        { head: 'delivery' },
        { head: 'price', number },
        { head: 'charged', number },
        { head: 'not charged', number },
        { head: 'paid', number },
        { head: 'outstanding', number },
      ]}
      rows={deliveries.map((one) => ({ key: one.id, cells: [one.name, ...cellsOf(one)] }))}
      foot={['in all', ...cellsOf(total)]}
    />
  );
}
