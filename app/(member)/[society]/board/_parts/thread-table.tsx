import Link from 'next/link';
import { whenWords } from '@/app/_ui/delivery-words';
import { Table } from '@/app/_ui/table';
import { topicName, topicNow } from './topic-words';
import type { readBoard } from '@/lib/usecases/board/read-board';

type Board = Awaited<ReturnType<typeof readBoard.run>>;
type Props = Pick<Board, 'threads' | 'states' | 'timeZone'> & { readonly society: string };

/** Threads by when they were last written in. */
export function ThreadTable({ society, threads, states, timeZone }: Props) {
  return (
    <Table
      caption="Threads"
      columns={[{ head: 'thread' }, { head: 'posts', number: true }, { head: 'last written in' }]}
      rows={threads.map((thread) => {
        const { id, title, kind, topic, by, posts, isUnread, lockedAt, lastPostAt } = thread;
        const state = topic && states[`${topic.kind}:${topic.key}`];
        return {
          key: id,
          cells: [
            <div key="title">
              <Link href={`/${society}/board/${id}`}>{isUnread ? <strong>{title}</strong> : title}</Link>
              {isUnread ? <span className="mark unknown gap">new</span> : null}
              <div className="small soft">
                {[
                  kind === 'notice' ? 'notice' : null,
                  by ?? 'a former member',
                  state ? `about ${topicName(state)}: ${topicNow(state)}` : null,
                  lockedAt ? 'locked' : null,
                ]
                  .filter(Boolean)
                  .join(' · ')}
              </div>
            </div>,
            posts,
            whenWords(lastPostAt, timeZone),
          ],
        };
      })}
    />
  );
}
