import { randomUUID } from 'node:crypto';
import { dayWords } from '@/app/_ui/delivery-words';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Sheet } from '@/app/_ui/sheet';
import { pieceWords } from '@/app/_ui/trial-words';
import { formatArea } from '@/lib/domain/quantity/area';
import type { readTrial } from '@/lib/usecases/trials/read-trials';
import { leaveAction, treatAction } from '../../actions';
import { GroundResult } from './ground-result';

type Read = Awaited<ReturnType<typeof readTrial.run>>;
type Props = { society: string; read: Read; block: Read['mine'][number] };

/** One's own plot in a trial: what to do where, and what it gave. */
export function OwnBlock({ society, read, block }: Props) {
  const { trial, state, units, today } = read;
  const { id, number, plotNumber, left, treatedOn, grounds } = block;
  const isOn = state === 'running' && !left;
  const canLeave = !left && (state === 'joining' || state === 'running');
  return (
    <>
      <Sheet title={`Your plot ${plotNumber}${number === null ? '' : `: block ${number}`}`} wide>
        {left ? <p>It dropped out, because: “{left.why}”. Its results are not reported.</p> : null}
        <ul>
          {grounds.map((ground) => (
            <li key={ground.id}>
              {capital(pieceWords(`${ground.bedName}:${ground.piece}`))} ({formatArea(ground.areaCm2, units)}):{' '}
              {ground.treatment ? (
                <>
                  <strong>{ground.treatment}</strong>, {ground.treatment === 'A' ? trial.treatmentA : trial.treatmentB}
                </>
              ) : (
                'to be drawn by the lot when joining closes'
              )}
            </li>
          ))}
        </ul>
        {treatedOn ? <p>Both were done on {dayWords(treatedOn)}.</p> : null}
        {isOn && !treatedOn ? (
          <Form action={treatAction.bind(null, society, id)} writeId={randomUUID()} submit="Both are done as laid out">
            <TextField type="date" name="treatedOn" label="Done on" value={today} />
          </Form>
        ) : null}
      </Sheet>
      {isOn || grounds.some(({ result }) => result)
        ? grounds.map((ground) => <GroundResult key={ground.id} {...{ society, read, ground, isOn }} />)
        : null}
      {canLeave ? (
        <Sheet title={state === 'joining' ? 'Leave it' : 'Drop out'}>
          <Form action={leaveAction.bind(null, society, id)} writeId={randomUUID()} submit="Leave the trial" danger>
            {state === 'joining' ? (
              <p>You may leave freely until the lot is drawn.</p>
            ) : (
              <TextField
                name="why"
                label="Reason"
                hint="Every member reads it in the report, without your name. This can’t be undone."
              />
            )}
          </Form>
        </Sheet>
      ) : null}
    </>
  );
}

function capital(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
