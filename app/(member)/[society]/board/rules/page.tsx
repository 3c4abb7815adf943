import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { NoteField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readBoardRules } from '@/lib/usecases/board/board-rules';
import { rulesAction } from '../actions';
import { PostBody } from '../_parts/post-body';

export const metadata: Metadata = { title: 'Rules of the board' };

const usual = `- Members only: what is written here is not carried outside.
- Write as you would speak over the fence. About ground and crops, not about persons.
- Say what you saw: how many beds, which season. One good bed proves little.
- Nothing is for sale.
- The committee may hide a post, with a reason that its author is told. Nothing is deleted.`;

export default async function RulesPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { rules, keeps, timeZone } = await ask(readBoardRules, society);
  return (
    <>
      <PageHead
        title="Rules of the board"
        lead={
          rules
            ? `Set by the committee ${whenWords(rules.setAt, timeZone)}.`
            : 'As they are until the committee sets its own.'
        }
      />
      <Sheet title="The rules">
        <PostBody body={rules?.body ?? usual} />
      </Sheet>
      {keeps ? (
        <Sheet title="Set them anew">
          <Form action={rulesAction.bind(null, society)} writeId={randomUUID()} submit="Set them">
            <NoteField
              name="body"
              label="The rules"
              rows={10}
              value={rules?.body ?? usual}
              hint="Those before stay on record."
            />
          </Form>
        </Sheet>
      ) : null}
    </>
  );
}
