import Link from 'next/link';
import { topicName, topicNow, topicPath } from './topic-words';
import type { TopicState } from '@/lib/usecases/board/topic-state';

/** A thing of the site that is written about, and how it stands now. */
export function TopicLine({ society, state }: { society: string; state: TopicState }) {
  const path = topicPath(state);
  return (
    <>
      {path ? <Link href={`/${society}${path}`}>{topicName(state)}</Link> : <strong>{topicName(state)}</strong>}{' '}
      <span className="soft">{topicNow(state)}</span>
    </>
  );
}
