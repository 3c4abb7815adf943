import { randomUUID } from 'node:crypto';
import { SelectField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { trenchWord } from '@/app/_ui/sheet-words';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';
import { retireSheetAction, tickTrenchAction, untickTrenchAction } from '../../actions';

/** For when the sheet does not say where the digger is: further on, further back, dug on another day, or not at all. */
export function Elsewhere({ society, read }: { society: string; read: SheetRead }) {
  const { sheet, done, total } = read;
  const word = trenchWord(sheet.order);
  const bound = [null, society, sheet.id] as const;
  const from = (first: number, count: number) =>
    Array.from({ length: count }, (_, at) => ({ value: String(first + at), label: `${word} ${first + at}` }));
  return (
    <Sheet title="Not where you are?">
      {done < total && !sheet.retiredAt ? (
        <Reason ask="Further on, or dug on another day">
          <Form action={tickTrenchAction.bind(...bound)} writeId={randomUUID()} submit="Tick them">
            <SelectField
              name="trench"
              label="Done up to"
              value={String(done + 1)}
              choices={from(done + 1, total - done)}
            />
            <TextField name="doneOn" type="date" label="Dug on" hint="Empty: today." />
            <input type="hidden" name="withBefore" value="yes" />
          </Form>
        </Reason>
      ) : null}
      {done > 0 ? (
        <Reason ask="Not so far yet">
          <Form action={untickTrenchAction.bind(...bound)} writeId={randomUUID()} submit="Take them back" danger>
            <SelectField name="trench" label="Not done from" value={String(done)} choices={from(1, done)} />
            <input type="hidden" name="withAfter" value="yes" />
            <p className="small soft">What they logged on the ground is taken back with them.</p>
          </Form>
        </Reason>
      ) : null}
      {sheet.retiredAt ? null : (
        <Reason ask="Take the sheet back">
          <Form action={retireSheetAction.bind(...bound)} writeId={randomUUID()} submit="Take the sheet back" danger>
            <p>
              {done > 0
                ? 'What was dug stays on the ground’s record; for the rest make another sheet.'
                : 'Nothing of it is done yet.'}
            </p>
            {done > 0 ? (
              <TickField name="undug" label={`None of it was dug: take its ${done === 1 ? word : 'ticks'} back too`} />
            ) : null}
          </Form>
        </Reason>
      )}
    </Sheet>
  );
}
