import 'server-only';
import { z } from 'zod';
import { countBefore, countPosts, type PostRecord, postById, postsOf } from '@/lib/data/post';
import { threadById } from '@/lib/data/thread';
import { readersOf } from '@/lib/data/thread-read';
import { topicsNamed, typedTopic } from '@/lib/domain/board/topic';
import { canEditPost, canKeepBoard, canReadPost } from '@/lib/domain/policy/board';
import { canEnter } from '@/lib/domain/policy/standing';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { topicStates } from './topic-state';

const postsShown = 50;

/** A post as the viewer may read it: no words, no earlier words and no pictures where they may not. */
export type ShownPost = Omit<PostRecord, 'body' | 'threadId'> & {
  readonly body: string | null;
  readonly isMine: boolean;
  readonly canEdit: boolean;
};

/** A thread with a page of its posts, and how the things stand that it is about or names. */
export const readThread = query({
  name: 'read-thread',
  allow: canEnter,
  input: z.object({
    threadId: z.uuid(),
    page: z.coerce.number().int().min(1).max(10_000).optional().catch(undefined),
    postId: z.uuid().optional().catch(undefined),
  }),
  read: async (context, { threadId, page, postId }) => {
    const { db, scope, today } = context;
    const thread = await threadById(db, scope, threadId);
    if (!thread) throw new NotFound();
    const count = await countPosts(db, scope, threadId);
    const pages = Math.max(1, Math.ceil(count / postsShown));
    const before = postId ? await countBefore(db, scope, threadId, postId) : null;
    // The newest where nothing else is asked for: that is what somebody comes back for.
    const shown = before === null ? Math.min(page ?? pages, pages) : Math.floor(before / postsShown) + 1;
    const posts = await postsOf(db, scope, threadId, { skip: (shown - 1) * postsShown, take: postsShown, day: today });
    const seen = posts.map((post) => shownTo(context, post, thread.lockedAt !== null));
    const named = topicsNamed(
      seen.flatMap(({ body }) => body ?? []),
      scope.slug,
    );
    const about = thread.topic;
    const readers = thread.mustRead ? await readersOf(db, scope, threadId, today) : [];
    const keeps = canKeepBoard(scope);
    return {
      thread,
      posts: seen,
      count,
      page: shown,
      pages,
      about: about && ((await topicStates(context, [about]))[0] ?? null),
      named: await topicStates(
        context,
        named.filter((topic) => !about || typedTopic(topic) !== typedTopic(about)),
      ),
      hasConfirmed: readers.some(({ id, confirmedAt }) => id === scope.memberId && confirmedAt !== null),
      readers: keeps ? readers : null,
      keeps,
      timeZone: scope.timeZone,
      today,
    };
  },
});

function shownTo({ scope }: ReadContext, { threadId: _, ...post }: PostRecord, isLocked: boolean): ShownPost {
  const isMine = post.byMemberId === scope.memberId;
  const may = { isMine, canEdit: canEditPost(scope, post, isLocked) };
  if (canReadPost(scope, post)) return { ...post, ...may };
  return { ...post, ...may, body: null, hiddenWhy: null, edits: [], pictures: [] };
}

/** One post that the viewer may edit, or take out of order. */
export const readPost = query({
  name: 'read-post',
  allow: canEnter,
  input: z.object({ postId: z.uuid() }),
  read: async (context, { postId }) => {
    const { db, scope, today } = context;
    const post = await postById(db, scope, postId, today);
    const thread = post && (await threadById(db, scope, post.threadId));
    if (!post || !thread || !canReadPost(scope, post)) throw new NotFound();
    return {
      thread,
      post: shownTo(context, post, thread.lockedAt !== null),
      keeps: canKeepBoard(scope),
      timeZone: scope.timeZone,
    };
  },
});
