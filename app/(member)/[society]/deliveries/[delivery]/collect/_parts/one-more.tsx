import { randomUUID } from 'node:crypto';
import { Form } from '@/app/_ui/form';
import { unitWord } from '@/app/_ui/delivery-words';
import { ThumbButton } from '@/app/_ui/thumb-button';
import { oneMoreAction } from '../../../actions';
import type { Collecting, Share } from './share-row';

type Props = { society: string; delivery: Collecting['delivery']; row: Share; several: boolean };

/** The one big button, where the thumb is. A double tap is one load. */
export function OneMore({ society, delivery, row: { bookingId, collected, plots }, several }: Props) {
  return (
    <div className="heap-thumb wide">
      <Form action={oneMoreAction.bind(null, society, delivery.id, bookingId)} writeId={randomUUID()} className="form">
        <input type="hidden" name="loads" value="1" />
        <ThumbButton does={`${bookingId} ${collected}`}>
          One more {unitWord(delivery.loadUnit)}
          {several ? ` for plot ${plots.join(', ')}` : ''}
        </ThumbButton>
      </Form>
    </div>
  );
}
