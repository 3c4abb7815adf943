import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import { typeInAction } from '../../actions';

export const metadata: Metadata = { title: 'Type bookings in' };

export default async function TypeInPage({ params }: { params: Promise<{ society: string; delivery: string }> }) {
  const { society, delivery: deliveryId } = await params;
  const { delivery, rows, timeZone } = await ask(readGateList, society, { deliveryId });
  const labels = Object.fromEntries(
    rows.map(({ holding }) => [`asked:${holding.id}`, `Plot ${plotNumbers(holding.plots)}`]),
  );
  return (
    <>
      <PageHead
        title="Type paper bookings in"
        lead={`${delivery.name}. Booking closes ${whenWords(delivery.closesAt, timeZone)}. Rows left as they are change nothing; the book says that you booked for them.`}
      >
        <Link className="button" href={`/${society}/office/deliveries/${deliveryId}`}>
          Back
        </Link>
      </PageHead>
      <Sheet title="Loads asked for" wide>
        <Form
          action={typeInAction.bind(null, society, deliveryId)}
          writeId={randomUUID()}
          submit="Enter them all"
          labels={labels}
        >
          <div className="type-in">
            {rows.map(({ holding, need, booking }) => (
              <TextField
                key={holding.id}
                name={`asked:${holding.id}`}
                label={plotNumbers(holding.plots)}
                hint={`${holding.members.map(({ name }) => name).join(', ')}; needs ${need}`}
                value={booking ? String(booking.asked) : ''}
                inputMode="numeric"
                className="short-field"
              />
            ))}
          </div>
        </Form>
      </Sheet>
    </>
  );
}
