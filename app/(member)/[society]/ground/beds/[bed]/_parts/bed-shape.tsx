import { randomUUID } from 'node:crypto';
import { SelectField, TextField, TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Reason, Sheet } from '@/app/_ui/sheet';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { formatLength, type Units } from '@/lib/domain/quantity/length';
import { changeBedAction, joinBedsAction, retireBedAction, splitBedAction } from '../../../actions';

type Props = {
  society: string;
  bed: { id: string; name: string; footprint: Footprint; typed: Readonly<Record<string, string>> | null };
  siblings: readonly { id: string; name: string }[];
  units: Units;
  today: string;
};

/** Measure the bed again, split it, join it to its neighbour, or take it out of use. */
export function BedShape({ society, bed, siblings, units, today }: Props) {
  const bound = [null, society, bed.id] as const;
  const { widthCm, lengthCm, xCm, yCm } = bed.footprint;
  const was = (name: string, cm: number) => bed.typed?.[name] || formatLength(cm, units);
  return (
    <Sheet title="The bed itself">
      <Reason ask="Name, size and position">
        <Form action={changeBedAction.bind(...bound)} writeId={randomUUID()} submit="Save">
          <TextField name="name" label="Name" value={bed.name} className="short-field" />
          <div className="row">
            <TextField name="width" label="Width" value={was('width', widthCm)} className="short-field" />
            <TextField name="length" label="Length" value={was('length', lengthCm)} className="short-field" />
          </div>
          <div className="row">
            <TextField name="x" label="From the left" value={formatLength(xCm, units)} className="short-field" />
            <TextField name="y" label="From the top" value={formatLength(yCm, units)} className="short-field" />
          </div>
        </Form>
      </Reason>
      <Reason ask="Split it in two">
        <Form action={splitBedAction.bind(...bound)} writeId={randomUUID()} submit="Split">
          <TickGroup name="across" legend="Cut across its">
            <TickField kind="radio" name="across" value="length" label="length" ticked />
            <TickField kind="radio" name="across" value="width" label="width" />
          </TickGroup>
          <TextField name="at" label="Distance from the top or left" className="short-field" />
          <TextField name="firstName" label="First part’s name" value={`${bed.name}a`} className="short-field" />
          <TextField name="secondName" label="Second part’s name" value={`${bed.name}b`} className="short-field" />
          <TextField name="from" type="date" label="From" value={today} />
        </Form>
      </Reason>
      {siblings.length ? (
        <Reason ask="Join it to another">
          <Form action={joinBedsAction.bind(...bound)} writeId={randomUUID()} submit="Join">
            <SelectField
              name="otherId"
              label="With bed"
              choices={siblings.map(({ id, name }) => ({ value: id, label: name }))}
              className="short-field"
            />
            <TextField name="name" label="Name" value={bed.name} className="short-field" />
            <TextField name="from" type="date" label="From" value={today} />
          </Form>
        </Reason>
      ) : null}
      <Reason ask="Take it out of use">
        <Form action={retireBedAction.bind(...bound)} writeId={randomUUID()} submit="It is no bed any more" danger>
          <p>What stood there stays on record.</p>
          <TextField name="from" type="date" label="From" value={today} />
        </Form>
      </Reason>
    </Sheet>
  );
}
