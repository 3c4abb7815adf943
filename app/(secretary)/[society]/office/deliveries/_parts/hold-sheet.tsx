import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { whenWords } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Mark } from '@/app/_ui/mark';
import { ResidueCaution } from '@/app/_ui/residue-caution';
import { verdictMarks, verdictWords } from '@/app/_ui/residue-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import type { readDeliveryTests } from '@/lib/usecases/residue/read-tests';
import { holdAction, releaseAction } from '../actions';

type Read = Awaited<ReturnType<typeof readDeliveryTests.run>>;
type Props = { readonly society: string; readonly read: Read; readonly timeZone: string };

/** Hold a heap from being shared out, or decide about one that is held; offered plainly where a test shows symptoms. */
export function HoldSheet({ society, read: { delivery, tests }, timeZone }: Props) {
  const { held } = delivery;
  const shows = tests.find(({ judged }) => judged.verdict === 'symptoms');
  const bound = [null, society, delivery.id] as const;
  const hold = (
    <Form action={holdAction.bind(...bound)} writeId={randomUUID()} submit="Hold it" danger>
      <p>It is not shared out until you release it or call it off. Bookings stand, and all who booked are told why.</p>
      <TextField
        name="reason"
        label="Reason"
        value={shows ? `a residue test shows symptoms (${shows.name})` : ''}
        hint="All members read it."
      />
    </Form>
  );
  return (
    <div id="hold">
      <Sheet
        title={held ? 'It is held' : 'Weedkiller residues'}
        aside={held ? <span className="soft small">from {whenWords(held.since, timeZone)}</span> : null}
      >
        {tests.length ? (
          <ul>
            {tests.map(({ id, name, judged, isEnded }) => (
              <li key={id}>
                <Link href={`/${society}/deliveries/${delivery.id}/residue/${id}`}>{name}</Link>{' '}
                <Mark kind={verdictMarks[judged.verdict]}>{verdictWords(judged.verdict, isEnded)}</Mark>
              </li>
            ))}
          </ul>
        ) : (
          <p>
            Nobody has tested it. <Link href={`/${society}/deliveries/${delivery.id}/residue`}>Start a test</Link>.
          </p>
        )}
        {held ? (
          <Form action={releaseAction.bind(...bound)} writeId={randomUUID()} submit="Release it">
            <p>It can be shared out again, and all who booked are told why. Or call it off below.</p>
            <TextField name="reason" label="Reason" hint="All who booked read it." />
          </Form>
        ) : shows ? (
          hold
        ) : (
          <Reason ask="Hold it from being shared out">{hold}</Reason>
        )}
        {held || shows ? <ResidueCaution /> : null}
      </Sheet>
    </div>
  );
}
