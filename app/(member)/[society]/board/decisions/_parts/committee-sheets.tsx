import { randomUUID } from 'node:crypto';
import Link from 'next/link';
import { SelectField, TextField, TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Sheet } from '@/app/_ui/sheet';
import type { readBallot } from '@/lib/usecases/ballots/read-ballots';
import { enterAction, openAction, withdrawAction } from '../actions';

type Read = Awaited<ReturnType<typeof readBallot.run>>;

/** What the committee does with a question: change and open a draft, enter hands from paper, withdraw it. */
export function CommitteeSheets({ society, read }: { society: string; read: Read }) {
  const { ballot, keeps, onPaper } = read;
  if (!keeps) return null;
  const isDraft = ballot.state === 'draft';
  if (!isDraft && ballot.state !== 'open') return null;
  return (
    <>
      {isDraft ? (
        <Sheet title="Open it">
          <p>
            The roll is that of today. Whoever is on it is told by mail, and the question stands as it is:{' '}
            <Link href={`/${society}/board/decisions/${ballot.id}/change`}>change it</Link> before.
          </p>
          <Form action={openAction.bind(null, society, ballot.id)} writeId={randomUUID()} submit="Open it">
            <TickField name="sure" label="It says what we want to ask" />
          </Form>
        </Sheet>
      ) : null}
      {onPaper.length ? (
        <Sheet title="Enter a hand">
          <Form action={enterAction.bind(null, society, ballot.id)} writeId={randomUUID()} submit="Enter it">
            <p className="small">
              For a member without an account, who told you or wrote to you. It is recorded as entered by you.
            </p>
            <SelectField
              name="rollId"
              label="Whose"
              choices={onPaper.map(({ id, name, plots, isRaised }) => ({
                value: id,
                label: `${name}${plots.length ? `, ${plots.join(', ')}` : ''}${isRaised ? ': raised already' : ''}`,
              }))}
            />
            <SelectField
              name="choiceId"
              label="For what"
              empty="choose"
              choices={ballot.choices.map(({ id, words }) => ({ value: id, label: words }))}
            />
          </Form>
        </Sheet>
      ) : null}
      <Sheet title="Withdraw it">
        <Form action={withdrawAction.bind(null, society, ballot.id)} writeId={randomUUID()} submit="Withdraw it" danger>
          <TextField name="why" label="Reason" hint="It stays on record with the question; no hand counts any more." />
        </Form>
      </Sheet>
    </>
  );
}
