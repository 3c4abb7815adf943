import { NoteField, TextField } from '@/app/_ui/field';

type Given = {
  readonly name?: string;
  readonly closesAt?: string;
  readonly seller?: string | null;
  readonly notes?: string | null;
};

/** What an order says of itself. */
export function FactsFields({ given = {} }: { given?: Given }) {
  return (
    <>
      <TextField name="name" label="Name" value={given.name} hint="such as: Seed for 2027" />
      <TextField name="closesAt" type="datetime-local" label="Lists close" value={given.closesAt} />
      <TextField
        name="seller"
        label="Where it is ordered"
        value={given.seller ?? ''}
        hint="In your own words; members do not see it."
      />
      <NoteField name="notes" label="Notes for everybody" value={given.notes ?? ''} hint="Empty: none." />
    </>
  );
}
