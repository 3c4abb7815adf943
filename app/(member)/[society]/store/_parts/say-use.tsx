import { randomUUID } from 'node:crypto';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { tenthsTyped } from '@/app/_ui/store-words';
import { formatMonthDay } from '@/lib/domain/calendar/month-day';
import { sayUseAction } from '../actions';

type Props = {
  readonly society: string;
  readonly kind: {
    readonly holdingId: string;
    readonly keepingKey: string;
    readonly said: { readonly tenthsPerWeek: number | null; readonly newCropFrom: string | null } | null;
  };
};

/** What a household uses of a kind, and when it looks for the new crop: said by whoever eats it. */
export function SayUse({ society, kind: { holdingId, keepingKey, said } }: Props) {
  return (
    <Form action={sayUseAction.bind(null, society, holdingId, keepingKey)} writeId={randomUUID()} submit="Keep it">
      <TextField
        name="perWeek"
        label="Used a week"
        value={tenthsTyped(said?.tenthsPerWeek ?? null)}
        inputMode="text"
        className="short-field"
        suffix="pieces"
        hint="About. A weight does too, such as 2 kg. Your goings over correct it."
      />
      <TextField
        name="newCropFrom"
        label="The new crop comes from"
        value={said?.newCropFrom ? formatMonthDay(said.newCropFrom) : ''}
        className="short-field"
        hint="a day of the year, such as 20 July"
      />
    </Form>
  );
}
