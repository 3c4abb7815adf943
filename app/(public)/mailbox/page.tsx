import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readDemoMailbox } from '@/lib/usecases/members/demo-mailbox';
import { NotFound } from '@/lib/usecases/refusal';

export const metadata: Metadata = { title: 'Mailbox of the demo' };

export default async function MailboxPage() {
  const mails = await readDemoMailbox().catch((error) => {
    if (error instanceof NotFound) notFound();
    throw error;
  });
  return (
    <>
      <PageHead title="The demo’s mailbox" lead="Mail that would be sent if a mail server were set up. Newest first." />
      {mails.length === 0 ? (
        <Empty>No mail yet. Invite somebody, or ask for a new password, and it lands here.</Empty>
      ) : null}
      <div className="stack wide">
        {mails.map(({ id, toAddress, subject, body }) => (
          <Sheet key={id} title={subject} aside={<span className="soft">to {toAddress}</span>}>
            <pre style={{ whiteSpace: 'pre-wrap', font: 'inherit', margin: 0, overflowWrap: 'anywhere' }}>
              {linked(body)}
            </pre>
          </Sheet>
        ))}
      </div>
    </>
  );
}

function linked(body: string) {
  return body.split(/(https?:\/\/\S+)/).map((part, at) =>
    part.startsWith('http') ? (
      <a key={`${at}-${part}`} href={part}>
        {part}
      </a>
    ) : (
      part
    ),
  );
}
