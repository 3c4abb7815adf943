import { randomUUID } from 'node:crypto';
import { TickField, TickGroup } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { whenWords } from '@/app/_ui/delivery-words';
import { Empty, Sheet } from '@/app/_ui/sheet';
import type { readBallot } from '@/lib/usecases/ballots/read-ballots';
import { raiseAction } from '../actions';

type Read = Awaited<ReturnType<typeof readBallot.run>>;

/** One’s own hands, each to be raised, or raised for something else. */
export function RaiseSheet({ society, read }: { society: string; read: Read }) {
  const { ballot, own, noHand } = read;
  if (noHand)
    return (
      <Sheet title="Your hand">
        <Empty>
          {noHand === 'joined-later'
            ? 'You have no hand in this one: the roll is that of the day on which it was opened, and you joined after that.'
            : 'You have no hand in this one: it is one for each holding, and you held no ground on the day on which it was opened.'}
        </Empty>
      </Sheet>
    );
  return own.map((hand) => {
    const plots = hand.plots.length ? ` for ${hand.plots.join(', ')}` : '';
    return (
      <Sheet key={hand.holdingId ?? 'mine'} title={`Your hand${plots}`}>
        <Raised hand={hand} read={read} />
        <Form
          action={raiseAction.bind(null, society, ballot.id)}
          writeId={randomUUID()}
          submit={hand.raised ? 'Raise it for this instead' : 'Raise it'}
        >
          <input type="hidden" name="holdingId" value={hand.holdingId ?? ''} />
          <TickGroup name="choiceId" legend="For what">
            {ballot.choices.map(({ id, words }) => (
              <TickField key={id} kind="radio" name="choiceId" value={id} label={words} ticked={id === hand.choiceId} />
            ))}
          </TickGroup>
          <p className="small">
            This is a show of hands, and open: after the close every member of the society sees who raised a hand for
            what. Until then you see your own, and how many are raised.
          </p>
        </Form>
      </Sheet>
    );
  });
}

function Raised({ hand, read: { ballot, timeZone } }: { hand: Read['own'][number]; read: Read }) {
  if (!hand.raised) return null;
  const words = ballot.choices.find(({ id }) => id === hand.choiceId)?.words;
  return (
    <p>
      Raised for <strong>{words}</strong>
      {hand.raised.by === null ? '' : ` by ${hand.raised.by}`}, {whenWords(hand.raised.at, timeZone)}.
    </p>
  );
}
