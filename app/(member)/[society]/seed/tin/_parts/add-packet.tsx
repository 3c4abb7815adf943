import { randomUUID } from 'node:crypto';
import { SelectField, TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Sheet } from '@/app/_ui/sheet';
import { addPacketAction } from '../../actions';

type Props = {
  readonly society: string;
  readonly holdingId: string;
  readonly crops: readonly { readonly key: string; readonly name: string }[];
  readonly thisYear: number;
};

/** Put a packet into the tin: counted, or by the weight that is printed on it. */
export function AddPacket({ society, holdingId, crops, thisYear }: Props) {
  return (
    <Sheet title="Put a packet in">
      <Form
        action={addPacketAction.bind(null, society, holdingId)}
        writeId={randomUUID()}
        submit="Put it in"
        labels={{ cropKey: 'Crop', amount: 'How much', packedYear: 'Year', germinationPercent: 'Test' }}
      >
        <SelectField
          name="cropKey"
          label="Crop"
          empty="choose"
          choices={crops.map(({ key, name }) => ({ value: key, label: name }))}
        />
        <TextField name="variety" label="Variety" hint="Empty: any." />
        <TextField name="amount" label="How much is in it" inputMode="decimal" className="short-field" />
        <TickGroup name="unit" legend="Counted, or as the packet says">
          <TickField kind="radio" name="unit" value="seeds" label="seeds" ticked />
          <TickField
            kind="radio"
            name="unit"
            value="milligrams"
            label="grams"
            hint="Turned into seeds by printed weights, which differ by half as much again: see the packet afterwards."
          />
        </TickGroup>
        <TextField
          name="packedYear"
          label="Year on the packet"
          value={String(thisYear)}
          inputMode="numeric"
          className="short-field"
          hint="Empty: it can’t be read."
        />
        <TextField
          name="germinationPercent"
          label="Came up in a test of your own"
          suffix="of 100"
          inputMode="numeric"
          className="short-field"
          hint="Empty: not tested. Ten on damp paper tell enough."
        />
      </Form>
    </Sheet>
  );
}
