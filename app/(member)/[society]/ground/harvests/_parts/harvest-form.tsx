import { randomUUID } from 'node:crypto';
import { NoteField, TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Reason } from '@/app/_ui/sheet';
import { typedAgain } from '@/app/_ui/yield-words';
import { harvestQualities } from '@/lib/domain/catalogue/harvest-qualities';
import type { readHarvestForm } from '@/lib/usecases/harvest/read-harvests';
import { logHarvestAction } from '../actions';

type Read = Awaited<ReturnType<typeof readHarvestForm.run>>;

/** How much, and how it was: short enough for one hand; the day is today, and notes are folded away. */
export function HarvestForm({ society, read }: { society: string; read: Read }) {
  const { planting, measure, corrects, units, today } = read;
  const weighedIn = units === 'metric' ? 'such as 4.2 kg or 350 g' : 'such as 9 lb 4 oz or 12 oz';
  const measured = corrects?.measure ?? measure;
  return (
    <Form
      action={logHarvestAction.bind(null, society, { plantingId: planting.id, replaces: corrects?.id ?? null })}
      writeId={randomUUID()}
      submit={corrects ? 'Correct it' : 'Log it'}
      labels={{
        amount: 'How much',
        measure: 'Weighed or counted',
        onDay: 'Day',
        quality: 'How it was',
        notes: 'Notes',
      }}
      className="form harvest-form"
    >
      <TextField
        name="amount"
        label="How much"
        value={corrects ? typedAgain(corrects.measure, corrects.amount, units) : ''}
        inputMode="text"
        hint={`A weight ${weighedIn}, or a number of pieces. 0: it came to nothing.`}
        className="short-field"
      />
      <TickGroup name="measure" legend="Weighed or counted" className="choices">
        <TickField
          name="measure"
          kind="radio"
          value="grams"
          label={units === 'metric' ? 'weighed: kg' : 'weighed: lb'}
          ticked={measured === 'grams'}
        />
        <TickField name="measure" kind="radio" value="pieces" label="counted" ticked={measured === 'pieces'} />
      </TickGroup>
      <TickGroup name="quality" legend="How it was" className="choices">
        {harvestQualities.map(({ key, name }) => (
          <TickField
            key={key}
            name="quality"
            kind="radio"
            value={key}
            label={name}
            ticked={(corrects?.quality ?? 'good') === key}
          />
        ))}
        <p className="small soft">{harvestQualities.map(({ name, says }) => `${name}: ${says}`).join('; ')}</p>
      </TickGroup>
      <TextField name="onDay" type="date" label="Day" value={corrects?.on ?? today} />
      {planting.clearedOn === null ? (
        <TickField
          name="cleared"
          label="That was the last of it: cleared now"
          hint="The ground counts as free from that day."
        />
      ) : null}
      <Reason ask="Notes">
        <NoteField name="notes" label="Notes, for the holders alone" value={corrects?.notes ?? ''} />
      </Reason>
    </Form>
  );
}
