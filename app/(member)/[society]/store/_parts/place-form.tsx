import { randomUUID } from 'node:crypto';
import { SelectField, TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import type { FormAction } from '@/app/_ui/form-state';
import { placeKindWords } from '@/app/_ui/store-words';
import { type PlaceKind, placeKinds } from '@/lib/domain/store/lot';

type Props = {
  readonly action: FormAction;
  readonly submit: string;
  readonly place?: { readonly name: string; readonly kind: PlaceKind; readonly tenthC: number | null };
};

/** A place: its name, what kind it is, and how cold it gets there. */
export function PlaceForm({ action, submit, place }: Props) {
  return (
    <Form action={action} writeId={randomUUID()} submit={submit}>
      <TextField name="name" label="What you call it" value={place?.name ?? ''} hint="such as “shed, top shelf”" />
      <SelectField
        name="kind"
        label="What it is"
        value={place?.kind ?? 'shed'}
        choices={placeKinds.map((value) => ({ value, label: placeKindWords[value] }))}
        className="short-field"
      />
      <TextField
        name="cold"
        label="How cold it gets there in winter"
        value={place && place.tenthC !== null ? String(place.tenthC / 10) : ''}
        suffix="°C"
        className="short-field"
        hint="On an ordinary cold night. Leave it empty if you do not know: forecasts are then more careful."
      />
    </Form>
  );
}
