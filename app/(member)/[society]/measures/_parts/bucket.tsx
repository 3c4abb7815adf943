import { randomUUID } from 'node:crypto';
import type { ReactNode } from 'react';
import { SelectField, TextField } from '@/app/_ui/field';
import { AskForm, Form } from '@/app/_ui/form';
import { Caution, Sheet } from '@/app/_ui/sheet';
import { citation } from '@/lib/domain/catalogue/sources';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { type BucketAnswer, fillNames } from '@/lib/usecases/measures/ask-bucket';
import { setDensityAction } from '../actions';
import { Answer } from './answer';
import { number } from './numbers';
import type { Tool } from './tool';

const fills = Object.fromEntries(fillNames.map((name, at) => [name, `Bucketful ${at + 1}`]));
const labels = { bucket: 'The bucket', empty: 'Empty bucket', ...fills };

const enough = {
  sound: 'Ten bucketfuls or more: a density to go by.',
  'fewer-than-ten': 'Five or more will do; ten make it sound for a large or uneven heap.',
  'fewer-than-five': 'Fewer than five say little. Weigh more, from other places in the heap.',
};

/** What a litre of a heap weighs, from weighed bucketfuls; the secretary sets a delivery's density by it. */
export function BucketMeasure({ society, read, answer, typed, errors }: Tool<'bucket'>) {
  const { units, deliveries } = read;
  return (
    <>
      <div className="stack">
        <Sheet title="What a litre of it weighs">
          <AskForm values={typed} errors={errors} submit="What does it weigh?" labels={labels}>
            <input type="hidden" name="what" value="bucket" />
            <input type="hidden" name="ask" value="yes" />
            <p className="small soft">
              Fill a bucket as the heap lies, without pressing it down, from several places, and weigh each. Empty lines
              are left out.
            </p>
            <div className="row">
              <TextField name="bucket" label="The bucket holds" className="short-field" hint="such as 10 L" />
              <TextField
                name="empty"
                label="Empty it weighs"
                className="short-field"
                hint={`${units === 'metric' ? 'such as 0.6 kg' : 'such as 1 lb 4 oz'}; empty: nothing`}
              />
            </div>
            <div className="fills">
              {fillNames.map((name) => (
                <TextField key={name} name={name} label={fills[name]} inputMode="text" />
              ))}
            </div>
          </AskForm>
        </Sheet>
      </div>
      {answer?.ok ? (
        <Found found={answer.value} units={units}>
          {deliveries.length ? <SetDensity society={society} deliveries={deliveries} typed={typed ?? {}} /> : null}
        </Found>
      ) : null}
    </>
  );
}

type Read = Tool<'bucket'>['read'];

type FoundProps = { readonly found: BucketAnswer; readonly units: Read['units']; readonly children: ReactNode };

function Found({ found: { test, density }, units, children }: FoundProps) {
  const { densityGPerL, leastGPerL, mostGPerL } = density;
  const netG = test.fullG.map((fullG) => fullG - test.emptyG);
  const totalG = netG.reduce((sum, massG) => sum + massG, 0);
  return (
    <Answer
      title={`${number(densityGPerL)} grams a litre`}
      why={
        <>
          <p>
            {density.fills} bucketfuls weigh {number(totalG)} g without the bucket: {number(totalG / density.fills)} g
            each ÷ {number(test.bucketLitres, 2)} L = {number(densityGPerL)} g/L.
          </p>
          <p className="small">
            At least five: {citation('lpelc-density')}. Ten to twenty, not pressed down: {citation('alberta-manure')}.
          </p>
        </>
      }
    >
      <p>
        The bucketfuls run from <strong>{number(leastGPerL)}</strong> to <strong>{number(mostGPerL)}</strong> g/L; a
        cubic metre weighs about {formatMassIn(densityGPerL * 1000, units)}.
      </p>
      <p>{enough[density.enough]}</p>
      <Caution>
        Lift with straight back, a half-full bucket where a full one strains you. Gloves on, no dust in the face, and
        wash your hands.
      </Caution>
      {children}
    </Answer>
  );
}

type SetProps = { society: string; deliveries: Read['deliveries']; typed: Readonly<Record<string, string>> };

function SetDensity({ society, deliveries, typed }: SetProps) {
  return (
    <>
      <h3>Go by it for a delivery</h3>
      <Form
        action={setDensityAction.bind(null, society)}
        writeId={randomUUID()}
        submit="Set its density"
        labels={{ ...labels, deliveryId: 'Delivery' }}
      >
        <p>
          Until loads are booked. It is worked out again from these weights, the loads expected follow, and the book
          keeps both.
        </p>
        {['bucket', 'empty', ...fillNames].map((name) => (
          <input key={name} type="hidden" name={name} value={typed[name] ?? ''} />
        ))}
        <SelectField
          name="deliveryId"
          label="Delivery"
          choices={deliveries.map(({ id, name, densityGPerL }) => ({
            value: id,
            label: `${name}, now ${densityGPerL} g/L`,
          }))}
        />
      </Form>
    </>
  );
}
