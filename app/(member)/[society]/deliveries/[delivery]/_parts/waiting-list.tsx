import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { dayWords, loadsWords } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { bookLateAction, leaveWaitingListAction } from '../../actions';
import type { Read } from './read';

type Heap = Pick<Read, 'delivery' | 'totals' | 'waiting'>;
type Props = { society: string; heap: Heap; claim: Read['claims'][number] };

/** Booking has closed: go on the waiting list for what is left over, see one's place on it, or leave it. */
export function WaitingList({ society, heap, claim: { holding, booking, need, mayBook } }: Props) {
  const { delivery, totals, waiting } = heap;
  const words = (loads: number) => loadsWords(loads, delivery.loadUnit);
  const plots = plotNumbers(holding.plots);
  const place = booking ? waiting.bookingIds.indexOf(booking.id) + 1 : 0;
  const bound = [null, society, delivery.id, holding.id] as const;
  return (
    <Sheet
      title={place ? `On the waiting list for ${words(booking?.asked ?? 0)}` : 'The waiting list'}
      aside={<span className="soft">plot {plots}</span>}
    >
      <p>
        {place
          ? `${ordinalOnList(place, waiting.bookingIds.length)}. `
          : `Booking has closed, and nothing was booked for plot ${plots}. `}
        {spokenFor(heap)} What is left over, or is given up, goes round the waiting list load by load, in the order in
        which people came.
      </p>
      {booking?.share ? (
        <p>
          <strong>{words(booking.share)}</strong> {booking.share === 1 ? 'is' : 'are'} yours so far;{' '}
          {booking.collectedLoads} collected. Collect by {dayWords(delivery.collectByOn)}.{' '}
          <Link href={`/${society}/deliveries/${delivery.id}/collect`}>At the heap</Link>
        </p>
      ) : null}
      {mayBook ? (
        <Form
          action={bookLateAction.bind(...bound)}
          writeId={randomUUID()}
          submit={place ? 'Change it' : 'Put me on the waiting list'}
          labels={{ asked: delivery.loadUnit === 'bale' ? 'Bales' : 'Loads' }}
        >
          <TextField
            name="asked"
            label={delivery.loadUnit === 'bale' ? 'Bales you ask for' : 'Barrow-loads you ask for'}
            value={String(booking?.asked ?? Math.min(need?.loads || 1, delivery.capLoads ?? 9999))}
            inputMode="numeric"
            className="short-field"
            hint={`${need ? `Your ground needs ${words(need.loads)}. ` : ''}${delivery.capLoads ? `At most ${delivery.capLoads} a holding. ` : ''}${place ? 'You keep your place.' : ''}`}
          />
          {need?.lines
            .filter(({ kind, massG }) => kind === 'bed' && massG > 0)
            .map(({ id }) => (
              <input key={id} type="hidden" name="beds" value={id} />
            ))}
        </Form>
      ) : null}
      {place && mayBook && !booking?.share ? (
        <Reason ask="Leave the list">
          <Form action={leaveWaitingListAction.bind(...bound)} writeId={randomUUID()} submit="Yes, take me off" danger>
            {null}
          </Form>
        </Reason>
      ) : null}
      {totals.late.claims > 0 && !place ? (
        <p className="soft small">
          {totals.late.claims === 1 ? 'One holding waits' : `${totals.late.claims} holdings wait`} already, for{' '}
          {words(totals.late.asked)}.
        </p>
      ) : null}
    </Sheet>
  );
}

function ordinalOnList(place: number, count: number): string {
  return `You are number ${place} of ${count} on it`;
}

function spokenFor({ delivery, totals }: Heap): string {
  const loads = delivery.heapLoads ?? delivery.expectedLoads;
  const known = delivery.heapLoads === null ? `about ${loads} expected` : `${loads} in the heap`;
  return `${Math.min(totals.asked, loads)} are spoken for, of ${known}.`;
}
