import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import { Form } from '@/app/_ui/form';
import { Empty, PageHead } from '@/app/_ui/sheet';
import { readUnsubscribe } from '@/lib/usecases/reminders/letter-wish';
import { unsubscribeAction } from '../../actions';

export const metadata: Metadata = { title: 'The weekly letter' };

export default async function UnsubscribePage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const letter = await readUnsubscribe(token);
  if (!letter)
    return (
      <>
        <PageHead title="This link ends nothing" />
        <Empty>Perhaps it was broken on its way. Sign in and end the weekly letter under “You”, “Reminders”.</Empty>
      </>
    );
  if (!letter.wanted)
    return <PageHead title="The weekly letter is ended" lead={`${letter.societyName} sends you none any more.`} />;
  return (
    <>
      <PageHead
        title={`The weekly letter of ${letter.societyName}`}
        lead="It comes on Mondays, when something wants doing or is new on the board."
      />
      <Form action={unsubscribeAction.bind(null, token)} writeId={randomUUID()} submit="Send it no more" />
    </>
  );
}
