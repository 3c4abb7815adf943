import { seedAmountWords } from '@/app/_ui/seed-words';
import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import type { Read } from './read';

/** The packs: what is wanted of each thing, how many packs of which size, and what is over. */
export function PacksToBuy({ read: { order, items, pooled } }: { read: Read }) {
  const titles: Partial<Record<typeof order.state, string>> = { open: 'As the lists stand', closed: 'To order' };
  const isHere = order.state === 'arrived' || order.state === 'settled';
  const wanted = pooled.lines.filter((line) => line.wanted > 0);
  return (
    <Sheet title={titles[order.state] ?? (isHere ? 'What came' : 'What was ordered')} flush>
      {wanted.length === 0 ? <p className="sheet-body">Nobody wants anything of it yet.</p> : null}
      <Table
        caption="Packs"
        columns={[
          { head: 'seed' },
          { head: 'wanted', number: true },
          { head: 'packs' },
          { head: 'over', number: true },
          { head: 'price', number: true },
        ]}
        rows={items.flatMap((item) => {
          const line = wanted.find(({ itemId }) => itemId === item.id);
          if (!line) return [];
          const { packs, level } = line;
          return [
            {
              key: item.id,
              mine: level !== null,
              cells: [
                <span key="name">
                  {item.cropName} “{item.variety}”
                </span>,
                seedAmountWords(item.unit, line.wanted),
                <Packs key="packs" item={item} counts={packs.counts} />,
                level === null ? (
                  packs.over ? (
                    seedAmountWords(item.unit, packs.over)
                  ) : (
                    'none'
                  )
                ) : (
                  <span key="short">short by {seedAmountWords(item.unit, line.wanted - packs.amount)}</span>
                ),
                formatPounds(packs.priceMinor),
              ],
            },
          ];
        })}
        foot={['seed in all', '', '', '', formatPounds(pooled.seedMinor)]}
      />
      <div className="sheet-body">
        <p className="small soft">
          {order.extraMinor ? `${formatPounds(order.extraMinor)} for postage and the like come to it. ` : ''}
          {pooled.leftMinor ? `${formatPounds(pooled.leftMinor)} nobody pays: the society’s own funds bear them. ` : ''}
          Nothing cheaper covers what is wanted with these packs.
        </p>
      </div>
    </Sheet>
  );
}

function Packs({ item: { unit, packs }, counts }: { item: Read['items'][number]; counts: readonly number[] }) {
  const bought = packs.flatMap(({ id, amount }, at) => (counts[at] ? [{ id, count: counts[at], amount }] : []));
  if (bought.length === 0) return 'none';
  return bought.map(({ id, count, amount }) => (
    <div key={id} className="nowrap">
      {count} × {seedAmountWords(unit, amount)}
    </div>
  ));
}
