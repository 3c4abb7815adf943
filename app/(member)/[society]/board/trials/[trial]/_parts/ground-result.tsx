import { randomUUID } from 'node:crypto';
import { whenWords } from '@/app/_ui/delivery-words';
import { TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { pieceWords, trialFigure, trialUnit } from '@/app/_ui/trial-words';
import { amountWords, typedAgain } from '@/app/_ui/yield-words';
import { formatArea } from '@/lib/domain/quantity/area';
import type { readTrial } from '@/lib/usecases/trials/read-trials';
import { resultAction } from '../../actions';

type Read = Awaited<ReturnType<typeof readTrial.run>>;
type Ground = Read['mine'][number]['grounds'][number];
type Gave = { readonly amount: number; readonly areaCm2: number };
type Props = { society: string; read: Read; ground: Ground; isOn: boolean };

/** What one piece of ground gave: as it was confirmed, from the harvests on record, or typed. */
export function GroundResult({ society, read, ground, isOn }: Props) {
  const { trial, units, timeZone } = read;
  const { result, earlier, onRecord } = ground;
  const send = resultAction.bind(null, society, ground.id);
  const told = (one: Gave) => `${amountWords(trial.measure, one.amount, units)} from ${formatArea(one.areaCm2, units)}`;
  const perGround = ({ amount, areaCm2 }: Gave) =>
    `${trialFigure((amount * 10_000) / areaCm2, trial.measure, units)} ${trialUnit(trial.measure, units)}`;
  return (
    <Sheet title={`What ${ground.treatment} gave, on ${pieceWords(`${ground.bedName}:${ground.piece}`)}`}>
      {result ? (
        <p>
          Confirmed: <strong>{told(result)}</strong>, which is {perGround(result)} (
          {result.source === 'harvests' ? 'from the harvests' : 'typed'}, {whenWords(result.at, timeZone)}).
        </p>
      ) : null}
      {earlier.length ? (
        <Reason ask="What was confirmed before">
          <ul>
            {earlier.map((one) => (
              <li key={one.at.toISOString()}>
                {told(one)}, {whenWords(one.at, timeZone)}
              </li>
            ))}
          </ul>
        </Reason>
      ) : null}
      {isOn && onRecord?.is === 'found' && !isSame(result, onRecord) ? (
        <Form action={send} writeId={randomUUID()} submit="Take it from the harvests">
          <p>
            Your harvests say {told(onRecord)}, of {onRecord.harvests}{' '}
            {onRecord.harvests === 1 ? 'harvest' : 'harvests'}.
          </p>
          <input type="hidden" name="source" value="harvests" />
          <input type="hidden" name="amount" value={onRecord.amount} />
          <TickField name="sure" label="That is all of it, and it is right." />
        </Form>
      ) : null}
      {isOn && onRecord?.is === 'reaches-beyond' ? (
        <p className="soft">
          A planting that you picked from reaches beyond this ground, so that your harvests can’t tell what came off it.
        </p>
      ) : null}
      {isOn ? (
        <Form action={send} writeId={randomUUID()} submit={result ? 'Correct it' : 'Confirm it'}>
          <input type="hidden" name="source" value="typed" />
          <TextField
            name="amount"
            label={trial.measure === 'grams' ? 'Weight in all' : 'Count in all'}
            hint={trial.measure === 'grams' ? 'such as 8.4 kg, or 18 lb 8 oz; 0 where it failed' : '0 where it failed'}
            value={result ? typedAgain(trial.measure, result.amount, units) : ''}
          />
          <TextField
            name="area"
            label="Ground it came from"
            hint={`Leave it empty for the whole piece, ${formatArea(ground.areaCm2, units)}.`}
            value={result && result.areaCm2 !== ground.areaCm2 ? `${(result.areaCm2 / 10_000).toFixed(3)} m²` : ''}
          />
          <TickField
            name="sure"
            label="That is all of it, and it is right."
            hint="It can be corrected until the report opens; what stood before is kept."
          />
        </Form>
      ) : null}
    </Sheet>
  );
}

function isSame(result: Ground['result'], found: { amount: number; areaCm2: number }): boolean {
  return result?.amount === found.amount && result.areaCm2 === found.areaCm2;
}
