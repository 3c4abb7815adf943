import { randomUUID } from 'node:crypto';
import { SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import type { PlantingPlace } from '@/lib/usecases/dates/read-dates';
import { recordDayAction } from '../actions';

type Props = {
  readonly society: string;
  readonly planting: PlantingPlace;
  /** What it most likely was; with several, the holder says which. */
  readonly what: readonly ('sown' | 'planted' | 'cleared')[];
  readonly today: string;
};

/** The day on which a planting was sown, planted or cleared: one tap where it was today. */
export function DayForm({ society, planting, what, today }: Props) {
  const [first = 'sown'] = what;
  return (
    <Form
      action={recordDayAction.bind(null, society, planting.id)}
      writeId={randomUUID()}
      submit={what.length > 1 ? 'Record it' : `Record it as ${first}`}
      className="day-form"
    >
      {what.length > 1 ? (
        <SelectField
          name="what"
          label={`Plot ${planting.plotNumber}, bed ${planting.bedName}`}
          value={first}
          choices={what.map((one) => ({ value: one, label: one }))}
        />
      ) : (
        <input type="hidden" name="what" value={first} />
      )}
      <TextField
        name="onDay"
        type="date"
        label={what.length > 1 ? 'on' : `Plot ${planting.plotNumber}, bed ${planting.bedName}: ${first} on`}
        value={today}
      />
    </Form>
  );
}
