import 'server-only';
import { threadById } from '@/lib/data/thread';
import { confirmRead, readTo } from '@/lib/data/thread-read';
import { canEnter } from '@/lib/domain/policy/standing';
import { threadInput } from '@/lib/schemas/board/board';
import { mutation } from '../operation';
import { NotFound } from '../refusal';

/** Mark a thread as read. How far somebody has read is theirs alone: the book has none of it. */
export const markRead = mutation({
  name: 'mark-read',
  allow: canEnter,
  input: threadInput,
  write: async ({ tx, scope, now }, { threadId }) => {
    if (!(await threadById(tx, scope, threadId))) throw new NotFound();
    await readTo(tx, scope, threadId, now);
    return { threadId };
  },
});

/** Say that one has read a notice that must be read; the committee sees who has. */
export const confirmNotice = mutation({
  name: 'confirm-notice',
  allow: canEnter,
  input: threadInput,
  write: async ({ tx, scope, now, note }, { threadId }) => {
    const thread = await threadById(tx, scope, threadId);
    if (!thread?.mustRead) throw new NotFound();
    await confirmRead(tx, scope, threadId, now);
    note({ verb: 'confirmed', thing: 'thread', thingId: threadId });
    return { threadId };
  },
});
