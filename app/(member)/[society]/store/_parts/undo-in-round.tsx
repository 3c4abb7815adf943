import { randomUUID } from 'node:crypto';
import { Form } from '@/app/_ui/form';
import { undoInRoundAction } from '../actions';

/** What was written of a lot today, taken back. */
export function UndoInRound({ society, goingOverId, name }: { society: string; goingOverId: string; name: string }) {
  return (
    <Form action={undoInRoundAction.bind(null, society, goingOverId)} writeId={randomUUID()} className="inline-form">
      <button type="submit" className="button">
        Undo<span className="sr-only"> {name}</span>
      </button>
    </Form>
  );
}
