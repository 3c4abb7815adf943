import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { whenWords } from '@/app/_ui/delivery-words';
import { TickField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { readReminders } from '@/lib/usecases/reminders/letter-wish';
import { letterAction, makeFeedAction, revokeFeedAction } from './actions';

export const metadata: Metadata = { title: 'Reminders' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ said?: string }> };

export default async function RemindersPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { said } = await searchParams;
  const { feedSince, letter, timeZone } = await ask(readReminders, society);
  return (
    <>
      <PageHead
        title="Reminders"
        lead="What is on “This week”, where you look anyway: in your own calendar, or in a letter on Mondays."
      >
        <Link className="button" href={`/${society}`}>
          This week
        </Link>
      </PageHead>
      {said === 'taken-back' && !feedSince ? (
        <p className="notice kept wide" role="status">
          Taken back: the address leads nowhere now.
        </p>
      ) : null}
      <Sheet title="Your own calendar">
        <p>
          An address that your calendar reads by itself: digging days, goings over, sowings, bookings that close, loads
          to collect. What you do here changes there, within hours. It is read only.
        </p>
        {feedSince ? <p>You have one since {whenWords(feedSince, timeZone)}.</p> : null}
        <Form
          action={makeFeedAction.bind(null, society)}
          writeId={randomUUID()}
          submit={feedSince ? 'Make another in its place' : 'Make an address'}
        />
        <Reason ask="Where to put it">
          <p>
            In your calendar program, add a calendar “from the web”, “by address” or “by subscription”, and paste the
            address. Do not open it as a file: a file does not change any more.
          </p>
          <p>
            Whoever has the address can read your days. Treat it like a key: if somebody else has it, make another, and
            the old one leads nowhere.
          </p>
        </Reason>
        {feedSince ? (
          <Form action={revokeFeedAction.bind(null, society)} writeId={randomUUID()} submit="Take it back" danger />
        ) : null}
      </Sheet>
      <Sheet title="The weekly letter">
        <Form action={letterAction.bind(null, society)} writeId={randomUUID()} submit="Save">
          <TickField
            name="wanted"
            label="Send me a letter on Mondays"
            hint={
              letter.hasAddress
                ? 'In the morning, and only when something wants doing or is new on the board. One press in the letter ends it.'
                : 'The society has no e-mail address of yours yet.'
            }
            ticked={letter.wanted}
          />
        </Form>
        {letter.hasAddress ? null : (
          <p>
            <Link href={`/${society}/me`}>Give an address</Link>
          </p>
        )}
      </Sheet>
    </>
  );
}
