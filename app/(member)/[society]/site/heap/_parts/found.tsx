import { randomUUID } from 'node:crypto';
import { TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { loadsWords } from '@/app/_ui/delivery-words';
import { Empty, Reason, Sheet } from '@/app/_ui/sheet';
import { makeDropPointAction, tipAtAction } from '../actions';
import { loadedWords, placeWords, proofWords, unitOf, wayWords } from './heap-words';
import { hereOf, type Placed, unitFor } from './placed';

/** The place that was found, its proof, and what the secretary can do with it. */
export function Found({ society, read }: { society: string; read: Placed }) {
  const { placing, units, loads, dropPoints } = read;
  const { best } = placing;
  if (!best)
    return (
      <Sheet title="No place is best">
        <Empty>{proofWords(placing)}</Empty>
      </Sheet>
    );
  const here = dropPoints.find(({ id }) => id === best.dropPointId);
  return (
    <Sheet title={here ? `Best: ${here.name}` : 'Best: a place on the paths'}>
      <p>
        {placeWords(best.at, units)}. From there {loadsWords(loads.here, unitFor(read))} come to{' '}
        <strong className="figure">
          {loadedWords(best.loadedCm, units)} loaded {unitOf(units)}
        </strong>
        ; there and back, {loadedWords(best.walkedCm, units)} {unitOf(units)} are walked.
      </p>
      <OwnWays read={read} />
      {best.equallyGood.length ? (
        <p>
          Equally good:{' '}
          {best.equallyGood
            .slice(0, 5)
            .map((at) => placeWords(at, units))
            .join('; ')}
          {best.equallyGood.length > 5 ? `; and ${best.equallyGood.length - 5} more` : ''}.
        </p>
      ) : null}
      <Reason ask="Why is there no better place?">
        <p>{proofWords(placing)}</p>
        <p>
          Worked out by: {placing.method.name}, version {placing.method.version}. The way back is taken to be as long as
          the way there.
        </p>
      </Reason>
      {read.runs ? <Acts society={society} read={read} /> : null}
    </Sheet>
  );
}

/** "From there you wheel 7 loads 84 m each." */
function OwnWays({ read }: { read: Placed }) {
  const { placing, units } = read;
  const own = placing.best?.own ?? [];
  if (own.length === 0) return null;
  const ways = own.flatMap(({ number, loads, wayCm }) =>
    loads
      ? [
          `${loadsWords(loads, unitFor(read))} ${wayWords(wayCm, units)} ${loads === 1 ? '' : 'each '}to your plot ${number}`,
        ]
      : [],
  );
  return (
    <p className="notice kept">
      {ways.length
        ? `From there you wheel ${ways.join(', and ')}.`
        : `None of the loads are yours. From there it is ${own.map(({ number, wayCm }) => `${wayWords(wayCm, units)} to your plot ${number}`).join(', ')}.`}
    </p>
  );
}

function Acts({ society, read }: { society: string; read: Placed }) {
  const { placing, basis } = read;
  const { best } = placing;
  const delivery = basis.delivery?.mayMove ? basis.delivery : null;
  if (!best) return null;
  if (best.dropPointId) {
    if (!delivery || delivery.dropPointId === best.dropPointId) return null;
    return (
      <Form
        action={tipAtAction.bind(null, society, hereOf(read))}
        writeId={randomUUID()}
        submit="Tip this delivery there"
      >
        <input type="hidden" name="dropPointId" value={best.dropPointId} />
      </Form>
    );
  }
  return (
    <Form
      action={makeDropPointAction.bind(null, society, hereOf(read), best.at)}
      writeId={randomUUID()}
      submit="Make this a drop point"
    >
      <TextField name="name" label="Name of the place" hint="such as: By the third apple tree" />
      {delivery ? <TickField name="tip" label={`Tip “${delivery.name}” there`} /> : null}
    </Form>
  );
}
