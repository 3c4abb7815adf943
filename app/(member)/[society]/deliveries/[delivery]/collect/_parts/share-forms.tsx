import { randomUUID } from 'node:crypto';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Reason } from '@/app/_ui/sheet';
import { giveUpAction, tickAction, undoAction } from '../../../actions';
import { type Share, untilWords } from './share-row';

type Props = { society: string; deliveryId: string; row: Share; timeZone: string };

/** The last tick taken back, for ten minutes; then it says who can. */
export function UndoLast({ society, deliveryId, row: { bookingId, last }, timeZone }: Props) {
  if (!last) return null;
  if (!last.mayUndo)
    return <p className="small soft">The last tick can no longer be undone here. The secretary can undo it.</p>;
  return (
    <Form action={undoAction.bind(null, society, deliveryId, bookingId)} writeId={randomUUID()} className="inline-form">
      <button type="submit" className="button">
        Undo the last{last.loads > 1 ? ` ${last.loads}` : ''}
      </button>
      <span className="small soft">{untilWords(last.until, timeZone)}</span>
    </Form>
  );
}

/** Several loads at once, or the rest given up. */
export function SeveralOrNone({ society, deliveryId, row: { bookingId, share, collected } }: Omit<Props, 'timeZone'>) {
  const bound = [null, society, deliveryId, bookingId] as const;
  const left = share - collected;
  if (left <= 0) return null;
  return (
    <Reason ask="Several at once, or no more wanted">
      <Form action={tickAction.bind(...bound)} writeId={randomUUID()} submit="Tick these off" className="form">
        <TextField name="loads" label="Loads" value={String(left)} inputMode="numeric" className="short-field" />
      </Form>
      <Form
        action={giveUpAction.bind(...bound)}
        writeId={randomUUID()}
        submit={`Give up the other ${left}`}
        danger
        className="form"
      >
        <p style={{ marginTop: '1rem' }}>They go to whoever comes next in the queue. This cannot be taken back.</p>
      </Form>
    </Reason>
  );
}
