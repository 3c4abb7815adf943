import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { topicName } from './_parts/topic-words';
import { readBoard } from '@/lib/usecases/board/read-board';
import { BoardWays } from './_parts/board-ways';
import { SearchForm } from './_parts/search-form';
import { ThreadTable } from './_parts/thread-table';
import { TopicLine } from './_parts/topic-line';

export const metadata: Metadata = { title: 'The board' };

type Search = { page?: string; topic?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function BoardPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { page: asked, topic: about } = await searchParams;
  const board = await ask(readBoard, society, { page: asked, topic: about });
  const { notices, threads, topic, page, isMore, keeps, reports } = board;
  const at = `/${society}/board`;
  const more = (to: number) => `${at}?${new URLSearchParams({ ...(about ? { topic: about } : {}), page: String(to) })}`;
  return (
    <>
      <PageHead
        title={topic ? `The board: ${topicName(topic)}` : 'The board'}
        lead="Notices of the committee, and what members tell each other. Members only."
      >
        <Link className="button first" href={about ? `${at}/new?topic=${encodeURIComponent(about)}` : `${at}/new`}>
          Begin a talk
        </Link>
        {keeps ? (
          <Link className="button" href={`${at}/notice`}>
            Post a notice
          </Link>
        ) : null}
        <Link className="button" href={`${at}/rules`}>
          Rules
        </Link>
      </PageHead>
      {keeps && reports ? (
        <p className="notice short wide">
          <Link href={`${at}/reports`}>
            {reports === 1 ? 'One post was reported' : `${reports} posts were reported`}
          </Link>{' '}
          and nobody has looked yet.
        </p>
      ) : null}
      {topic ? (
        <p className="wide">
          <TopicLine society={society} state={topic} /> · <Link href={at}>everything on the board</Link>
        </p>
      ) : null}
      {notices.length ? (
        <Sheet title="Notices" wide>
          <ul className="plain-list">
            {notices.map(({ id, title, endsOn, mustRead, isConfirmed, isUnread }) => (
              <li key={id}>
                <Link href={`${at}/${id}`}>{isUnread ? <strong>{title}</strong> : title}</Link>
                {mustRead && !isConfirmed ? <span className="mark short gap">please read</span> : null}
                {endsOn ? <span className="soft small"> until {dayWords(endsOn)}</span> : null}
              </li>
            ))}
          </ul>
        </Sheet>
      ) : null}
      {topic || page > 1 ? null : <BoardWays society={society} />}
      <Sheet title="Threads" wide flush aside={<SearchForm society={society} words="" />}>
        {threads.length === 0 ? (
          <Empty>
            {topic
              ? 'Nobody has written about it yet. Begin a talk.'
              : 'Nothing is written here yet. Begin a talk: a question about a bed, a crop or the heap.'}
          </Empty>
        ) : null}
        <ThreadTable society={society} {...board} />
        {page > 1 || isMore ? (
          <nav className="actions" aria-label="Pages">
            {page > 1 ? <Link href={more(page - 1)}>later</Link> : null}
            <span>page {page}</span>
            {isMore ? <Link href={more(page + 1)}>earlier</Link> : null}
          </nav>
        ) : null}
      </Sheet>
    </>
  );
}
