import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { PaperSheet } from '@/app/_ui/paper-sheet';
import { seedAmountWords } from '@/app/_ui/seed-words';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { readOfficeSeedOrder } from '@/lib/usecases/seed/read-office-order';

export const metadata: Metadata = { title: 'Hand-out list' };

type Props = { params: Promise<{ society: string; order: string }> };

export default async function HandOutPage({ params }: Props) {
  const { society, order: orderId } = await params;
  const { order, holders, items } = await ask(readOfficeSeedOrder, society, { orderId });
  const itemOf = new Map(items.map((item) => [item.id, item]));
  return (
    <PaperSheet
      title={`To hand out: ${order.name}`}
      lead={`${holders.length} ${holders.length === 1 ? 'holding' : 'holdings'}. Tick each thing as it is handed over.`}
      caption="Seed by plot, with boxes to tick"
      columns={[{ head: 'plot' }, { head: 'holder' }, { head: 'seed' }, { head: 'owes', number: true }]}
      rows={holders.map(({ holdingId, plots, names, wants, owed }) => ({
        key: holdingId,
        cells: [
          <b key="plot">{plots.join(', ')}</b>,
          names.join(', '),
          <ul key="seed" className="plain-list">
            {wants.flatMap(({ itemId, given, handedOutAt }) => {
              const item = itemOf.get(itemId);
              return item && given > 0
                ? [
                    <li key={itemId}>
                      <span aria-label={handedOutAt ? 'handed out' : 'to hand out'} role="img">
                        {handedOutAt ? '☒' : '☐'}
                      </span>{' '}
                      {seedAmountWords(item.unit, given)} {item.cropName.toLowerCase()} “{item.variety}”
                    </li>,
                  ]
                : [];
            })}
          </ul>,
          owed ? formatPounds(owed.minor) : '',
        ],
      }))}
    />
  );
}
