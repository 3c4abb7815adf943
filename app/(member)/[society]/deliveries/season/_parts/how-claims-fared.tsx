import { Table } from '@/app/_ui/table';
import type { SeasonPart } from '@/lib/usecases/season/season-paper';

/** What was asked and needed, and how many claims were met in full. */
export function HowClaimsFared({ part: { deliveries, total, unit } }: { part: SeasonPart }) {
  const number = true;
  const cellsOf = (one: SeasonPart['total'] | SeasonPart['deliveries'][number]) => [
    one.asked,
    one.need,
    one.share,
    one.metInFull,
    one.short,
    one.gaveUp,
  ];
  return (
    <Table
      caption={`Claims by delivery${unit === 'bale' ? ', bales' : ''}`}
      columns={[
        { head: 'delivery' },
        { head: 'loads asked', number },
        { head: 'loads needed', number },
        { head: 'loads shared', number },
        { head: 'claims met in full', number },
        { head: 'claims short', number },
        { head: 'claims given up', number },
      ]}
      rows={deliveries.map((one) => ({ key: one.id, cells: [one.name, ...cellsOf(one)] }))}
      foot={['in all', ...cellsOf(total)]}
    />
  );
}
