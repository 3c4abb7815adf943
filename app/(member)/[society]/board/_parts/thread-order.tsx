import { randomUUID } from 'node:crypto';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { Sheet } from '@/app/_ui/sheet';
import type { readThread } from '@/lib/usecases/board/read-thread';
import { lockAction, noticeAction, unlockAction } from '../actions';
import { NoticeFields } from './notice-fields';
import { NoticeReaders } from './notice-readers';

type Read = Awaited<ReturnType<typeof readThread.run>>;

/** What the committee does with a thread. */
export function ThreadOrder({ society, read: { thread, readers, timeZone } }: { society: string; read: Read }) {
  return (
    <div className="stack">
      {thread.kind === 'notice' ? (
        <Sheet title="How the notice stands">
          {readers && thread.mustRead ? <NoticeReaders readers={readers} timeZone={timeZone} /> : null}
          <Form action={noticeAction.bind(null, society, thread.id)} writeId={randomUUID()} submit="Save">
            <NoticeFields {...thread} />
          </Form>
        </Sheet>
      ) : null}
      <Sheet title={thread.lockedAt ? 'Locked' : 'Lock it'}>
        {thread.lockedAt ? (
          <Form action={unlockAction.bind(null, society, thread.id)} writeId={randomUUID()} submit="Open it again" />
        ) : (
          <Form action={lockAction.bind(null, society, thread.id)} writeId={randomUUID()} submit="Lock it">
            <p>It stays to be read; nobody writes in it any more, until you open it again.</p>
            <TextField name="why" label="Reason" hint="Everybody reads it." />
          </Form>
        )}
      </Sheet>
    </div>
  );
}
