import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords, whenWords } from '@/app/_ui/delivery-words';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { readThread } from '@/lib/usecases/board/read-thread';
import { confirmAction, markReadAction, replyAction } from '../actions';
import { DraftField, DraftPosted } from '../_parts/draft-field';
import { HowToWrite } from '../_parts/how-to-write';
import { PostItem } from '../_parts/post-item';
import { ReadMark } from '../_parts/read-mark';
import { ThreadOrder } from '../_parts/thread-order';
import { TopicLine } from '../_parts/topic-line';
import { topicCrops } from '../_parts/topic-words';

export const metadata: Metadata = { title: 'A thread' };

type Params = Promise<{ society: string; thread: string }>;
type Props = { params: Params; searchParams: Promise<{ page?: string; post?: string }> };

export default async function ThreadPage({ params, searchParams }: Props) {
  const { society, thread: threadId } = await params;
  const { page: asked, post: postId } = await searchParams;
  const read = await ask(readThread, society, { threadId, page: asked, postId });
  const { thread, posts, about, named, page, pages, keeps, timeZone } = read;
  const at = `/${society}/board/${threadId}`;
  const mine = posts.flatMap(({ isMine, body }) => (isMine && body !== null ? [body] : []));
  const drafts = [`${society} talk`, `${society} notice`, `${society} reply ${threadId}`];
  return (
    <>
      <PageHead
        title={thread.title}
        lead={
          thread.kind === 'notice'
            ? `A notice of the committee${thread.endsOn ? `, until ${dayWords(thread.endsOn)}` : ''}`
            : undefined
        }
      >
        <Link className="button" href={`/${society}/board`}>
          The board
        </Link>
      </PageHead>
      <ReadMark society={society} threadId={threadId} writeId={randomUUID()} />
      <DraftPosted keeps={drafts} bodies={mine} />
      {about ? (
        <p className="wide">
          About <TopicLine society={society} state={about} /> ·{' '}
          <Link href={`/${society}/board?topic=${encodeURIComponent(`${about.kind}:${about.key}`)}`}>
            all that is written about it
          </Link>
          {topicCrops(about).map((crop) => (
            <span key={crop}>
              {' '}
              ·{' '}
              <Link href={`/${society}/board/results?crop=${encodeURIComponent(crop)}`}>
                what neighbours’ beds gave{topicCrops(about).length > 1 ? `: ${crop}` : ''}
              </Link>
            </span>
          ))}
        </p>
      ) : null}
      {thread.lockedAt ? (
        <p className="notice short wide">
          Locked {whenWords(thread.lockedAt, timeZone)}, because: “{thread.lockedWhy}”.
        </p>
      ) : null}
      <Sheet
        title={posts.length === 1 ? 'One post' : `${read.count} posts`}
        wide
        aside={<Pages {...{ at, page, pages }} />}
      >
        <ol className="posts">
          {posts.map((post) => (
            <PostItem key={post.id} {...{ society, post, timeZone, keeps }} />
          ))}
        </ol>
        <Pages {...{ at, page, pages }} />
        {named.length ? (
          <>
            <h3>Named here</h3>
            <ul>
              {named.map((state) => (
                <li key={`${state.kind}:${state.key}`}>
                  <TopicLine society={society} state={state} />
                </li>
              ))}
            </ul>
          </>
        ) : null}
        {thread.mustRead && !read.hasConfirmed ? (
          <Form action={confirmAction.bind(null, society, threadId)} writeId={randomUUID()} submit="I have read it" />
        ) : null}
        {thread.mustRead && read.hasConfirmed ? <p className="soft">You have said that you read it.</p> : null}
        <div className="script-off">
          <Form action={markReadAction.bind(null, society, threadId)} writeId={randomUUID()} submit="Mark as read" />
        </div>
      </Sheet>
      {thread.lockedAt ? null : (
        <Sheet title="Write in it">
          <Form action={replyAction.bind(null, society, threadId)} writeId={randomUUID()} submit="Post it">
            <DraftField
              keep={`${society} reply ${threadId}`}
              name="body"
              label="What you have to say"
              rows={6}
              hint="Kept on this device until it is posted."
            />
            <HowToWrite />
          </Form>
        </Sheet>
      )}
      {keeps ? <ThreadOrder society={society} read={read} /> : null}
    </>
  );
}

function Pages({ at, page, pages }: { at: string; page: number; pages: number }) {
  if (pages === 1) return null;
  return (
    <nav className="actions" aria-label="Pages of the thread">
      {page > 1 ? <Link href={`${at}?page=${page - 1}`}>earlier</Link> : null}
      <span>
        page {page} of {pages}
      </span>
      {page < pages ? <Link href={`${at}?page=${page + 1}`}>later</Link> : null}
    </nav>
  );
}
