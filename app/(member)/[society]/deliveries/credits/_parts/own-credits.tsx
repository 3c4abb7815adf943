import Link from 'next/link';
import { creditWords, shortDayWords } from '@/app/_ui/delivery-words';
import { Table } from '@/app/_ui/table';
import type { readCredits } from '@/lib/usecases/deliveries/read-credits';

type Entries = Awaited<ReturnType<typeof readCredits.run>>[number]['own'];

/** What one's own holdings were credited and debited, delivery by delivery. */
export function OwnCredits({ society, material, entries }: { society: string; material: string; entries: Entries }) {
  return (
    <Table
      caption={`Your credits of ${material}, by delivery`}
      columns={[{ head: 'entered' }, { head: 'plot' }, { head: 'delivery' }, { head: 'loads', number: true }]}
      rows={entries.map(({ id, on, plots, deliveryId, delivery, changeMillionths }) => ({
        key: id,
        cells: [
          shortDayWords(on),
          plots.join(', '),
          deliveryId ? (
            <Link key="delivery" href={`/${society}/deliveries/${deliveryId}/queue`}>
              {delivery}
            </Link>
          ) : (
            'a holding ended'
          ),
          creditWords(changeMillionths),
        ],
      }))}
      foot={['in all', '', '', creditWords(entries.reduce((sum, { changeMillionths }) => sum + changeMillionths, 0))]}
    />
  );
}
