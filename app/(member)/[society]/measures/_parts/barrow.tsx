import { randomUUID } from 'node:crypto';
import { TextField } from '@/app/_ui/field';
import { AskForm, Form } from '@/app/_ui/form';
import { Caution, Sheet } from '@/app/_ui/sheet';
import type { BarrowAnswer } from '@/lib/usecases/measures/ask-barrow';
import { keepMeasuredAction } from '../actions';
import { Answer } from './answer';
import { number } from './numbers';
import type { Tool } from './tool';

const labels = { bucket: 'The bucket', struck: 'Level', heaped: 'Heaped', barrowLitres: 'Barrow' };

/** What a barrow holds, from bucketfuls counted into it. */
export function BarrowMeasure({ society, read: { barrows }, answer, typed, errors }: Tool<'barrow'>) {
  return (
    <>
      <div className="stack">
        <Sheet title="What a barrow holds">
          <AskForm values={typed} errors={errors} submit="What does it hold?" labels={labels}>
            <input type="hidden" name="what" value="barrow" />
            <input type="hidden" name="ask" value="yes" />
            <p className="small soft">
              Count bucketfuls into it: to the rim, then on until the heap just stays on. Your barrow stands at{' '}
              {barrows.own} L, the society’s load at {barrows.society} L.
            </p>
            <TextField name="bucket" label="The bucket holds" className="short-field" hint="such as 10 L" />
            <div className="row">
              <TextField name="struck" label="Bucketfuls to the rim" inputMode="decimal" className="short-field" />
              <TextField
                name="heaped"
                label="Bucketfuls heaped"
                inputMode="decimal"
                className="short-field"
                hint="if you wheel it heaped"
              />
            </div>
          </AskForm>
        </Sheet>
      </div>
      {answer?.ok ? <Found found={answer.value} society={society} /> : null}
    </>
  );
}

function Found({ found: { bucketLitres, struck, heaped, barrow }, society }: { found: BarrowAnswer; society: string }) {
  const bucket = number(bucketLitres, 2);
  return (
    <Answer
      title={`${number(barrow.struckLitres)} litres level${barrow.heaped ? `, ${number(barrow.heaped.litres)} heaped` : ''}`}
      why={
        <>
          <p>
            {number(struck, 2)} bucketfuls × {bucket} L = {number(barrow.struckLitres)} L.
            {barrow.heaped && heaped !== null
              ? ` ${number(heaped, 2)} × ${bucket} L = ${number(barrow.heaped.litres)} L, ${barrow.heaped.overPercent} % over.`
              : ''}
          </p>
          <p className="small">Counting; common practice. How much heaping adds was found in no sound source.</p>
        </>
      }
    >
      <div className="row">
        {[barrow.struckLitres, ...(barrow.heaped ? [barrow.heaped.litres] : [])].map((litres, at) => (
          <Form
            key={at === 0 ? 'level' : 'heaped'}
            action={keepMeasuredAction.bind(null, society)}
            writeId={randomUUID()}
            submit={`Keep ${number(litres)} L as my barrow`}
            labels={labels}
          >
            <input type="hidden" name="barrowLitres" value={litres} />
          </Form>
        ))}
      </div>
      <p className="small soft">Loads are booked by the society’s barrow all the same; the secretary sets that.</p>
      <Caution>Fill it so that it starts with an easy push, and less on soft or rough ground.</Caution>
    </Answer>
  );
}
