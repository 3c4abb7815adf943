import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Empty, Reason, Sheet } from '@/app/_ui/sheet';
import { sourceWords } from '@/app/_ui/setting-words';
import { shrinkingDays } from '@/lib/domain/catalogue/heap-shrinkage';
import { lookAction } from '../actions';
import { countBetween, type Order } from './order-words';

type Heap = Order['heaps'][number];

/** What is left of what came before: by the count or the newest look, and how it may have shrunk since. */
export function OldHeaps({ society, heaps }: { society: string; heaps: readonly Heap[] }) {
  return (
    <Sheet title="Left on old heaps" flush>
      {heaps.length === 0 ? (
        <div className="sheet-body">
          <Empty>
            Nothing lies there that the service knows of: every settled heap was collected, or looked at and gone.
          </Empty>
        </div>
      ) : null}
      <ol className="heap-list">
        {heaps.map((heap) => (
          <OneHeap key={heap.id} society={society} heap={heap} />
        ))}
      </ol>
    </Sheet>
  );
}

function OneHeap({ society, heap }: { society: string; heap: Heap }) {
  const { id, name, material, dropPoint, leastLoads, mostLoads, known, shrinks, isDoubted } = heap;
  const { leastLossPercent, mostLossPercent, sources } = shrinks;
  return (
    <li>
      <p>
        <strong>{countBetween(leastLoads, mostLoads)} loads</strong> of{' '}
        <Link href={`/${society}/office/deliveries/${id}`}>{name}</Link>
        <span className="small soft" style={{ display: 'block' }}>
          {material.name}
          {dropPoint ? `, ${dropPoint}` : ''}; {known.loads} {known.by === 'look' ? 'seen' : 'not collected'}{' '}
          {dayWords(known.on)}
        </span>
      </p>
      <Form action={lookAction.bind(null, society, id)} writeId={randomUUID()} className="inline-form">
        <button type="submit" name="loads" value="0" className="button">
          Nothing left
        </button>
      </Form>
      {isDoubted ? (
        <p className="notice short small">A residue test of it shows symptoms: it is counted for nothing here.</p>
      ) : null}
      <Reason ask={`Why ${countBetween(leastLoads, mostLoads)}?`}>
        <p className="small">
          Where it lies it loses {leastLossPercent} to {mostLossPercent} % of its volume in the first{' '}
          {shrinkingDays.value} days, and little after. At least: {sourceWords(sources.leastLossPercent)}. At most:{' '}
          {sourceWords(sources.mostLossPercent)}. Days: {sourceWords(shrinkingDays.source)}. Counted at the weight of a
          load as it came.
        </p>
        <Form action={lookAction.bind(null, society, id)} writeId={randomUUID()} submit="That is what I see">
          <TextField
            name="loads"
            label="Looked today: about how many loads?"
            inputMode="numeric"
            className="short-field"
          />
        </Form>
      </Reason>
    </li>
  );
}
