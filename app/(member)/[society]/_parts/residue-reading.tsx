import { randomUUID } from 'node:crypto';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { potName } from '@/app/_ui/residue-words';
import type { BioassayPot, BioassayReading } from '@/lib/domain/bioassay/record';
import { readingAction } from '../ground/residue/actions';

type Props = {
  readonly society: string;
  readonly testId: string;
  readonly pots: readonly BioassayPot[];
  readonly on: string;
  /** The reading that is corrected. */
  readonly corrects?: BioassayReading;
};

const columns = [
  { field: 'up', label: 'Up' },
  { field: 'distorted', label: 'Distorted' },
  { field: 'trueLeaves', label: 'Leaf sets' },
] as const;

/** What the pots show on a day: one line a pot. Where nothing is up, the rest may stay empty. */
export function ReadingForm({ society, testId, pots, on, corrects }: Props) {
  const labels = Object.fromEntries(
    pots.flatMap((pot) =>
      columns.map(({ field, label }) => [`${field}:${pot.id}`, `${potName(pot)}, ${label.toLowerCase()}`]),
    ),
  );
  const was = (pot: BioassayPot, field: (typeof columns)[number]['field']) =>
    corrects?.pots.find(({ potId }) => potId === pot.id)?.[field];
  return (
    <Form
      action={readingAction.bind(null, society, testId)}
      writeId={randomUUID()}
      submit={corrects ? 'Correct the reading' : 'Record the reading'}
      labels={labels}
    >
      <TextField name="on" type="date" label="Read on" value={corrects?.on ?? on} />
      {corrects ? <input type="hidden" name="replaces" value={corrects.on} /> : null}
      <p className="small soft">
        Plants that are up; of these, with cupped, curled or fern-like leaves; sets of true leaves on the plant furthest
        behind. Leave the line of a pot empty if you did not read it.
      </p>
      <div className="pot-lines">
        {pots.map((pot) => (
          <fieldset key={pot.id} className="pot-line">
            <legend>{potName(pot)}</legend>
            {columns.map(({ field, label }) => {
              const value = was(pot, field);
              return (
                <TextField
                  key={field}
                  name={`${field}:${pot.id}`}
                  label={label}
                  inputMode="numeric"
                  {...(value === undefined ? {} : { value: String(value) })}
                />
              );
            })}
          </fieldset>
        ))}
      </div>
    </Form>
  );
}
