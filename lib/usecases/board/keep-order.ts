import 'server-only';
import { changePost, postById } from '@/lib/data/post';
import { createReport, openReports, settleReports } from '@/lib/data/post-report';
import { changeThread, lockThread } from '@/lib/data/thread';
import { canKeepBoard } from '@/lib/domain/policy/board';
import { canEnter } from '@/lib/domain/policy/standing';
import { z } from 'zod';
import {
  hidePostInput,
  leaveStandingInput,
  lockThreadInput,
  reportPostInput,
  showPostInput,
  threadInput,
} from '@/lib/schemas/board/board';
import { mutation, query } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';
import { openPost } from './write-post';

/** Hide a post with a reason, which its author is told; whoever reported it has their answer. */
export const hidePost = mutation({
  name: 'hide-post',
  allow: canKeepBoard,
  input: hidePostInput,
  write: async (context, { postId, why }) => {
    const { tx, scope, now, note } = context;
    const { post, thread } = await openPost(context, postId);
    if (post.isHidden) refuse('post-hidden');
    await changePost(tx, scope, postId, { hiddenAt: now, hiddenWhy: why });
    await settleReports(tx, scope, postId, 'hidden', now);
    note({ verb: 'hid', thing: 'post', thingId: postId, forMemberId: post.byMemberId, after: { why } });
    const body = `The committee has hidden what you wrote in “${thread.title}”, because: “${why}”. You still see it there; others do not. Ask the committee if you think that it should stand.`;
    await tell(context, [post.byMemberId], 'a post of yours was hidden', body);
    return { postId, threadId: thread.id };
  },
});

/** Show a hidden post again; its author is told. */
export const showPost = mutation({
  name: 'show-post',
  allow: canKeepBoard,
  input: showPostInput,
  write: async (context, { postId }) => {
    const { tx, scope, note } = context;
    const { post, thread } = await openPost(context, postId);
    if (!post.isHidden) refuse('not-hidden');
    await changePost(tx, scope, postId, { hiddenAt: null, hiddenWhy: null });
    note({
      verb: 'showed',
      thing: 'post',
      thingId: postId,
      forMemberId: post.byMemberId,
      before: { why: post.hiddenWhy },
    });
    const body = `What you wrote in “${thread.title}” is shown again.`;
    await tell(context, [post.byMemberId], 'a post of yours is shown again', body);
    return { postId, threadId: thread.id };
  },
});

/** Lock a thread: it stays to be read, and nobody writes in it any more. */
export const lockTalk = mutation({
  name: 'lock-thread',
  allow: canKeepBoard,
  input: lockThreadInput,
  write: async ({ tx, scope, now, note }, { threadId, why }) => {
    const thread = await lockThread(tx, scope, threadId);
    if (!thread) throw new NotFound();
    if (thread.lockedAt) refuse('locked-already');
    await changeThread(tx, scope, threadId, { lockedAt: now, lockedWhy: why });
    note({ verb: 'locked', thing: 'thread', thingId: threadId, after: { why } });
    return { threadId };
  },
});

/** Open a locked thread again. */
export const unlockTalk = mutation({
  name: 'unlock-thread',
  allow: canKeepBoard,
  input: threadInput,
  write: async ({ tx, scope, note }, { threadId }) => {
    const thread = await lockThread(tx, scope, threadId);
    if (!thread) throw new NotFound();
    if (!thread.lockedAt) refuse('not-locked');
    await changeThread(tx, scope, threadId, { lockedAt: null, lockedWhy: null });
    note({ verb: 'unlocked', thing: 'thread', thingId: threadId, before: { why: thread.lockedWhy } });
    return { threadId };
  },
});

/** Tell the committee of a post that is out of order. */
export const reportPost = mutation({
  name: 'report-post',
  allow: canEnter,
  input: reportPostInput,
  write: async ({ tx, scope, now, today, note }, { postId, why }) => {
    const post = await postById(tx, scope, postId, today);
    // One's own is edited or taken back; what is hidden needs no telling.
    if (!post || post.isHidden || post.isTakenBack || post.byMemberId === scope.memberId) throw new NotFound();
    if (!(await createReport(tx, scope, postId, why, now))) refuse('reported-already');
    note({ verb: 'reported', thing: 'post', thingId: postId });
    return { postId, threadId: post.threadId };
  },
});

/** Let a reported post stand. */
export const leaveStanding = mutation({
  name: 'leave-standing',
  allow: canKeepBoard,
  input: leaveStandingInput,
  write: async (context, { postId }) => {
    const { tx, scope, now, note } = context;
    await openPost(context, postId);
    if ((await settleReports(tx, scope, postId, 'stands', now)) === 0) refuse('nothing-reported');
    note({ verb: 'let stand', thing: 'post', thingId: postId });
    return { postId };
  },
});

/** What members told the committee of, and nobody has looked at. */
export const readReports = query({
  name: 'read-reports',
  allow: canKeepBoard,
  input: z.object({}),
  read: async ({ db, scope }) => ({ reports: await openReports(db, scope), timeZone: scope.timeZone }),
});
