import { randomUUID } from 'node:crypto';
import { dayWords } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { sourceWords } from '@/app/_ui/setting-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { curingWords, daysWords } from '@/app/_ui/store-words';
import type { ReadLot } from '@/lib/usecases/store/read-lot';
import { cureLotAction } from '../actions';

/** The clock of a lot that was laid out to cure. */
export function LotCuring({ society, read }: { society: string; read: ReadLot }) {
  const { id, curingFrom, curedOn, clock, today } = read;
  if (curingFrom === null) return null;
  return (
    <Sheet title="Curing">
      <p>
        Laid out on {dayWords(curingFrom)}
        {curedOn
          ? `; done on ${dayWords(curedOn)}, after ${clock ? daysWords(clock.day) : 'some days'}.`
          : clock
            ? `: ${curingWords(clock)}.`
            : '.'}
      </p>
      {clock ? (
        <Reason ask="Who says so?">
          <p className="small">{sourceWords(clock.source)}.</p>
        </Reason>
      ) : (
        <p className="small soft">No account is on record of how this kind is cured.</p>
      )}
      {curedOn ? null : (
        <Form action={cureLotAction.bind(null, society, id)} writeId={randomUUID()} submit="Curing is done">
          <TextField name="curedOn" type="date" label="Done on" value={today} />
        </Form>
      )}
    </Sheet>
  );
}
