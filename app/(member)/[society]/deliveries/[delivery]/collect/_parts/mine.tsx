import { dayWords } from '@/app/_ui/delivery-words';
import { Sheet } from '@/app/_ui/sheet';
import type { Collecting, Share } from './share-row';
import { SeveralOrNone, UndoLast } from './share-forms';

type Props = { society: string; read: Collecting; row: Share };

/** One's own share, as large as it goes: 3 of 7. */
export function Mine({ society, read: { delivery, timeZone }, row }: Props) {
  const { share, collected, plots } = row;
  const left = share - collected;
  const at = { society, deliveryId: delivery.id, row };
  return (
    <Sheet title={`Plot ${plots.join(', ')}`} aside={<span className="soft">your share</span>}>
      <p className="heap-count" role="status">
        {collected} <small>of</small> {share}
      </p>
      {left > 0 ? (
        <p>
          {left} still to fetch, by {dayWords(delivery.collectByOn)}.
        </p>
      ) : (
        <p className="notice kept">All {share} collected.</p>
      )}
      <UndoLast {...at} timeZone={timeZone} />
      <SeveralOrNone {...at} />
    </Sheet>
  );
}
