import 'server-only';
import { changePost, createPost, editPost as writeEdit, type PostRecord, postById } from '@/lib/data/post';
import { changeThread, lockThread, type ThreadRecord } from '@/lib/data/thread';
import { readTo } from '@/lib/data/thread-read';
import { canEnter } from '@/lib/domain/policy/standing';
import { editPostInput, replyInput, takeBackPostInput } from '@/lib/schemas/board/board';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';

/** A post and its thread, the thread locked until the transaction ends. */
export async function openPost(
  { tx, scope, today }: WriteContext,
  postId: string,
): Promise<{ post: PostRecord; thread: ThreadRecord }> {
  const found = await postById(tx, scope, postId, today);
  const thread = found && (await lockThread(tx, scope, found.threadId));
  // Read once more under the lock: another may have changed it meanwhile.
  const post = thread && (await postById(tx, scope, postId, today));
  if (!post || !thread) throw new NotFound();
  return { post, thread };
}

/** One’s own post, while it may be changed. */
export async function openOwnPost(context: WriteContext, postId: string): Promise<PostRecord> {
  const { post, thread } = await openPost(context, postId);
  if (post.byMemberId !== context.scope.memberId) throw new NotFound();
  if (post.isHidden) refuse('post-hidden');
  if (post.isTakenBack) refuse('post-taken-back');
  if (thread.lockedAt) refuse('thread-locked');
  return post;
}

/** Write in a thread. */
export const reply = mutation({
  name: 'reply',
  allow: canEnter,
  input: replyInput,
  write: async ({ tx, scope, now, note }, { threadId, body }) => {
    const thread = await lockThread(tx, scope, threadId);
    if (!thread) throw new NotFound();
    if (thread.lockedAt) refuse('thread-locked');
    const postId = await createPost(tx, scope, threadId, body, now);
    await changeThread(tx, scope, threadId, { lastPostAt: now });
    await readTo(tx, scope, threadId, now);
    note({ verb: 'wrote', thing: 'post', thingId: postId, after: { threadId } });
    return { postId, threadId };
  },
});

/** Put other words into one’s own post; what it said before stays to be read. */
export const editPost = mutation({
  name: 'edit-post',
  allow: canEnter,
  input: editPostInput,
  write: async (context, { postId, body }) => {
    const post = await openOwnPost(context, postId);
    const { threadId } = post;
    if (post.body === body) return { postId, threadId };
    await writeEdit(context.tx, context.scope, post, body, context.now);
    context.note({ verb: 'edited', thing: 'post', thingId: postId, after: { threadId } });
    return { postId, threadId };
  },
});

/** Take one’s own post back: the others see that it was, and no longer what it said. */
export const takeBackPost = mutation({
  name: 'take-back-post',
  allow: canEnter,
  input: takeBackPostInput,
  write: async (context, { postId }) => {
    const { threadId } = await openOwnPost(context, postId);
    await changePost(context.tx, context.scope, postId, { takenBackAt: context.now });
    context.note({ verb: 'took back', thing: 'post', thingId: postId, after: { threadId } });
    return { postId, threadId };
  },
});
