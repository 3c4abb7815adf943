import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { ask } from '@/app/_server/caller';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { readBallots } from '@/lib/usecases/ballots/read-ballots';
import { readSettings } from '@/lib/usecases/settings/settings';
import { QuestionFields } from '../_parts/question-fields';
import { draftAction } from '../actions';

export const metadata: Metadata = { title: 'Put a question' };

export default async function NewQuestionPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const [{ keeps, today, timeZone }, { values }] = await Promise.all([
    ask(readBallots, society),
    ask(readSettings, society),
  ]);
  if (!keeps) notFound();
  return (
    <>
      <PageHead
        title="Put a question to a count of hands"
        lead="It is kept as a draft first, which the committee alone reads. Once it is opened it never changes."
      />
      <Sheet title="The question">
        <Form action={draftAction.bind(null, society)} writeId={randomUUID()} submit="Keep it as a draft">
          <QuestionFields ballot={null} values={values} closesAt={`${addDays(today, 14)}T20:00`} timeZone={timeZone} />
        </Form>
      </Sheet>
    </>
  );
}
