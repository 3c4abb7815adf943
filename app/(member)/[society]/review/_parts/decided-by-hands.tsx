import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { Sheet } from '@/app/_ui/sheet';
import type { readReview } from '@/lib/usecases/review/read-review';

type Decisions = Awaited<ReturnType<typeof readReview.run>>['decisions'];

const outcomes = { carried: 'carried', 'not-carried': 'not carried', 'no-quorum': 'too few hands' } as const;

/** What was decided in the season's year; nothing where nothing was. */
export function DecidedByHands({ society, decisions }: { society: string; decisions: Decisions }) {
  if (decisions.length === 0) return null;
  return (
    <Sheet title="Decided by a count of hands">
      <ul className="plain-list">
        {decisions.map(({ id, number, title, on, outcome }) => (
          <li key={id}>
            {number}. <Link href={`/${society}/board/decisions/${id}`}>{title}</Link>: <b>{outcomes[outcome]}</b>{' '}
            <span className="soft small">{dayWords(on)}</span>
          </li>
        ))}
      </ul>
    </Sheet>
  );
}
