import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readBallot } from '@/lib/usecases/ballots/read-ballots';
import { readSettings } from '@/lib/usecases/settings/settings';
import { QuestionFields } from '../../_parts/question-fields';
import { changeAction } from '../../actions';

export const metadata: Metadata = { title: 'Change a question' };

export default async function ChangeQuestionPage({ params }: { params: Promise<{ society: string; ballot: string }> }) {
  const { society, ballot: ballotId } = await params;
  const [{ ballot, keeps, timeZone }, { values }] = await Promise.all([
    ask(readBallot, society, { ballotId }),
    ask(readSettings, society),
  ]);
  if (!keeps || ballot.state !== 'draft') notFound();
  return (
    <>
      <PageHead title="Change a question" lead="While it is a draft. Once it is opened it never changes." />
      <Sheet title="The question">
        <Form action={changeAction.bind(null, society, ballotId)} writeId={randomUUID()} submit="Keep the draft">
          <QuestionFields ballot={ballot} values={values} closesAt="" timeZone={timeZone} />
        </Form>
      </Sheet>
    </>
  );
}
