import 'server-only';
import { noticesStanding } from '@/lib/data/board';
import { openReports } from '@/lib/data/post-report';
import { threadsWithReplies } from '@/lib/data/thread-read';
import { canKeepBoard } from '@/lib/domain/policy/board';
import type { ReadContext } from '../operation';

/** What the board wants of a member: a notice to be read, replies, and for the committee what was reported. */
export type BoardDue =
  | { readonly code: 'must-read'; readonly threadId: string; readonly title: string; readonly postedAt: Date }
  | {
      readonly code: 'replies';
      readonly threadId: string;
      readonly title: string;
      readonly replies: number;
      readonly since: Date;
    }
  | { readonly code: 'reported'; readonly count: number };

/** The notices first, then replies by how long they have waited. */
export async function dueOfBoard({ db, scope, today }: ReadContext): Promise<BoardDue[]> {
  const [notices, replies, reports] = await Promise.all([
    noticesStanding(db, scope, today),
    threadsWithReplies(db, scope),
    canKeepBoard(scope) ? openReports(db, scope) : [],
  ]);
  return [
    ...notices
      .filter(({ mustRead, isConfirmed }) => mustRead && !isConfirmed)
      .map(({ id, title, createdAt }): BoardDue => ({ code: 'must-read', threadId: id, title, postedAt: createdAt })),
    ...replies.map(({ id, ...one }): BoardDue => ({ code: 'replies', threadId: id, ...one })),
    ...(reports.length ? [{ code: 'reported' as const, count: reports.length }] : []),
  ];
}
