import { whenWords } from '@/app/_ui/delivery-words';
import { Reason } from '@/app/_ui/sheet';
import type { readThread } from '@/lib/usecases/board/read-thread';

type Readers = NonNullable<Awaited<ReturnType<typeof readThread.run>>['readers']>;

/** Who has said that they read a notice, and who has not: for the committee. */
export function NoticeReaders({ readers, timeZone }: { readers: Readers; timeZone: string }) {
  const have = readers.filter(({ confirmedAt }) => confirmedAt !== null);
  const not = readers.filter(({ confirmedAt }) => confirmedAt === null);
  return (
    <>
      <p>
        <strong>
          {have.length} of {readers.length}
        </strong>{' '}
        members say that they have read it.
      </p>
      <Reason ask="Who has, and who has not">
        <p>Not yet: {not.map(({ name }) => name).join(', ') || 'nobody is missing'}.</p>
        <ul>
          {have.map(({ id, name, confirmedAt }) => (
            <li key={id}>
              {name} <span className="soft small">{confirmedAt ? whenWords(confirmedAt, timeZone) : ''}</span>
            </li>
          ))}
        </ul>
      </Reason>
    </>
  );
}
