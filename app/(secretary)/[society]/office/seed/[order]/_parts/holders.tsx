import { randomUUID } from 'node:crypto';
import { Form } from '@/app/_ui/form';
import { Mark } from '@/app/_ui/mark';
import { seedAmountWords } from '@/app/_ui/seed-words';
import { Sheet } from '@/app/_ui/sheet';
import { formatPounds } from '@/lib/domain/ledger/pounds';
import { handOutAction } from '../../actions';
import type { OrderProps, Read } from './read';

/** Who wants what, is given what, and owes what; ticked off as it is handed out. */
export function Holders({ society, read }: OrderProps) {
  const { order, holders } = read;
  const isHere = order.state === 'arrived' || order.state === 'settled';
  if (holders.length === 0) return null;
  return (
    <Sheet title={`${holders.length} ${holders.length === 1 ? 'holding' : 'holdings'}`}>
      <ul className="plain-list">
        {holders.map((holder) => (
          <li key={holder.holdingId} className="ruled">
            <p>
              <strong>Plot {holder.plots.join(', ') || 'given up'}</strong>{' '}
              <span className="soft">{holder.names.join(' and ')}</span>
              {holder.owed ? <b> {formatPounds(holder.owed.minor)}</b> : null}
            </p>
            <p className="small">{holder.wants.map((want) => wantWords(read, want)).join('; ')}.</p>
            {isHere ? <HandOut society={society} read={read} holder={holder} /> : null}
          </li>
        ))}
      </ul>
    </Sheet>
  );
}

type Holder = Read['holders'][number];

function wantWords({ items }: Read, { itemId, amount, given }: Holder['wants'][number]): string {
  const item = items.find(({ id }) => id === itemId);
  if (!item) return '';
  const words = `${seedAmountWords(item.unit, given)} of ${item.cropName.toLowerCase()} “${item.variety}”`;
  return given === amount ? words : `${words}, of ${seedAmountWords(item.unit, amount)} wanted`;
}

function HandOut({ society, read: { order }, holder }: OrderProps & { holder: Holder }) {
  const waiting = holder.wants.filter(({ given }) => given > 0);
  if (waiting.length === 0) return <Mark kind="short">nothing came for it</Mark>;
  const isOut = waiting.every(({ handedOutAt }) => handedOutAt !== null);
  return (
    <Form
      action={handOutAction.bind(null, society, order.id, holder.holdingId)}
      writeId={randomUUID()}
      className="inline-form"
      {...(isOut ? {} : { submit: `Handed out to ${holder.plots.join(', ')}` })}
    >
      {isOut ? (
        <>
          <Mark kind="kept">handed out</Mark>
          <button type="submit" className="button">
            Not yet after all
          </button>
        </>
      ) : (
        <input type="hidden" name="out" value="yes" />
      )}
    </Form>
  );
}
