import { randomUUID } from 'node:crypto';
import { loadsWords } from '@/app/_ui/delivery-words';
import { SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { Sheet } from '@/app/_ui/sheet';
import type { readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import { bookLateAction } from '../../actions';

type Read = Awaited<ReturnType<typeof readGateList.run>>;

/** Who came after booking had closed, and a place on the list for somebody who asks on paper or at the gate. */
export function LateSheet({ society, read: { delivery, rows } }: { society: string; read: Read }) {
  const waiting = rows.filter(({ booking }) => booking?.lateAt);
  const without = rows.filter(({ booking }) => !booking);
  return (
    <Sheet title={waiting.length ? `The waiting list: ${waiting.length}` : 'The waiting list'}>
      {waiting.length ? (
        <ol>
          {waiting
            .toSorted((one, other) => Number(one.booking?.lateAt) - Number(other.booking?.lateAt))
            .map(({ holding, booking }) => (
              <li key={holding.id}>
                plot {plotNumbers(holding.plots)}: asks for {loadsWords(booking?.asked ?? 0, delivery.loadUnit)}
                {booking?.share ? `, ${booking.share} are theirs` : ''}
              </li>
            ))}
        </ol>
      ) : (
        <p className="soft">Nobody has asked since booking closed.</p>
      )}
      {without.length ? (
        <Form
          action={bookLateAction.bind(null, society, delivery.id)}
          writeId={randomUUID()}
          submit="Put them on it"
          labels={{ holdingId: 'Plot', asked: 'Loads' }}
        >
          <SelectField
            name="holdingId"
            label="Somebody else asks: plot"
            empty="choose a plot"
            choices={without.map(({ holding }) => ({
              value: holding.id,
              label: `${plotNumbers(holding.plots)}: ${holding.members.map(({ name }) => name).join(' and ')}`,
            }))}
          />
          <TextField
            name="asked"
            label={delivery.loadUnit === 'bale' ? 'Bales' : 'Loads'}
            inputMode="numeric"
            className="short-field"
          />
        </Form>
      ) : null}
    </Sheet>
  );
}
