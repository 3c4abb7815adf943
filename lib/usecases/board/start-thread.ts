import 'server-only';
import { createPost } from '@/lib/data/post';
import { changeThread, createThread, lockThread, type NewThread } from '@/lib/data/thread';
import { readTo } from '@/lib/data/thread-read';
import type { Topic } from '@/lib/domain/board/topic';
import { canKeepBoard } from '@/lib/domain/policy/board';
import { canEnter } from '@/lib/domain/policy/standing';
import { changeNoticeInput, postNoticeInput, startTalkInput } from '@/lib/schemas/board/board';
import { everyMemberId } from '../deliveries/recipients';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';
import { checkTopic } from './choose-topic';

async function begin(context: WriteContext, thread: NewThread, body: string): Promise<{ threadId: string }> {
  const { tx, scope, now, note } = context;
  await checkTopic(context, thread.topic);
  const threadId = await createThread(tx, scope, thread, now);
  await createPost(tx, scope, threadId, body, now);
  await readTo(tx, scope, threadId, now);
  const { kind, pinned, mustRead, endsOn } = thread;
  note({ verb: 'began', thing: 'thread', thingId: threadId, after: { kind, pinned, mustRead, endsOn } });
  return { threadId };
}

// A thread is about one thing: of a list, or a day.
function topicOf({
  topic,
  aboutDay,
}: {
  readonly topic: Topic | null;
  readonly aboutDay: string | null;
}): Topic | null {
  if (topic && aboutDay) refuse('one-topic', { field: 'aboutDay' });
  return aboutDay ? { kind: 'date', key: aboutDay } : topic;
}

/** Begin a talk. */
export const startTalk = mutation({
  name: 'start-talk',
  allow: canEnter,
  input: startTalkInput,
  write: (context, { title, body, ...about }) => {
    const plain = { pinned: false, mustRead: false, endsOn: null };
    return begin(context, { kind: 'talk', title, topic: topicOf(about), ...plain }, body);
  },
});

/** Post a notice; where it must be read, everybody is told by mail that it is there. */
export const postNotice = mutation({
  name: 'post-notice',
  allow: canKeepBoard,
  input: postNoticeInput,
  write: async (context, { writeId: _, body, topic, aboutDay, ...notice }) => {
    if (notice.endsOn && notice.endsOn < context.today) refuse('notice-ends-before', { field: 'endsOn' });
    const made = await begin(context, { kind: 'notice', topic: topicOf({ topic, aboutDay }), ...notice }, body);
    if (notice.mustRead) await tellAll(context, notice.title);
    return made;
  },
});

async function tellAll(context: WriteContext, title: string): Promise<void> {
  const members = await everyMemberId(context.tx, context.scope, context.today);
  const others = members.filter((id) => id !== context.scope.memberId);
  await tell(
    context,
    others,
    `to be read: ${title}`,
    `The committee asks you to read a notice: “${title}”. It is on the board.`,
  );
}

/** Change how a notice stands: at the head or not, until when, and whether it must be read. */
export const changeNotice = mutation({
  name: 'change-notice',
  allow: canKeepBoard,
  input: changeNoticeInput,
  write: async (context, { threadId, writeId: _, ...change }) => {
    const { tx, scope, today, note } = context;
    const before = await lockThread(tx, scope, threadId);
    if (before?.kind !== 'notice') throw new NotFound();
    if (change.endsOn && change.endsOn < today && change.endsOn !== before.endsOn)
      refuse('notice-ends-before', { field: 'endsOn' });
    await changeThread(tx, scope, threadId, change);
    const { pinned, mustRead, endsOn } = before;
    note({ verb: 'changed', thing: 'thread', thingId: threadId, before: { pinned, mustRead, endsOn }, after: change });
    if (change.mustRead && !mustRead) await tellAll(context, before.title);
    return { threadId };
  },
});
