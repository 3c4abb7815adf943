import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { Db, Tx } from './db';
import { isHereOn, type Scope } from './scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';

/** What was written, whether or not the viewer may read it: the use-case decides. */
export type PostRecord = {
  readonly id: string;
  readonly threadId: string;
  readonly byMemberId: string;
  /** Null for who has left and does not want their name on it. */
  readonly by: string | null;
  readonly body: string;
  readonly writtenAt: Date;
  readonly editedAt: Date | null;
  readonly isTakenBack: boolean;
  readonly hiddenWhy: string | null;
  readonly isHidden: boolean;
  readonly edits: readonly { readonly body: string; readonly untilAt: Date }[];
  readonly pictures: readonly PictureRecord[];
};

export type PictureRecord = {
  readonly id: string;
  readonly says: string;
  readonly widthPx: number;
  readonly heightPx: number;
};

const shape = {
  by: { select: { name: true, leftOn: true, nameStays: true } },
  edits: { orderBy: { untilAt: 'asc' } },
  pictures: { select: { id: true, says: true, widthPx: true, heightPx: true }, orderBy: { createdAt: 'asc' } },
} as const satisfies Prisma.PostInclude;

type Row = Prisma.PostGetPayload<{ include: typeof shape }>;
export type Author = Row['by'];

/** The name under a post: that of who is a member, and of who has left as they chose. */
export function nameUnder({ name, leftOn, nameStays }: Author, day: CalendarDate): string | null {
  return isHereOn(leftOn, day) || nameStays ? name : null;
}

function toPost(row: Row, day: CalendarDate): PostRecord {
  const { id, threadId, byMemberId, body, writtenAt, editedAt, hiddenWhy, pictures } = row;
  return {
    ...{ id, threadId, byMemberId, body, writtenAt, editedAt, hiddenWhy, pictures },
    by: nameUnder(row.by, day),
    isTakenBack: row.takenBackAt !== null,
    isHidden: row.hiddenAt !== null,
    edits: row.edits.map(({ body: before, untilAt }) => ({ body: before, untilAt })),
  };
}

/** Posts of a thread in the order in which they were written, a page of them. */
export async function postsOf(
  db: Db,
  { societyId }: Scope,
  threadId: string,
  page: { readonly skip: number; readonly take: number; readonly day: CalendarDate },
): Promise<PostRecord[]> {
  const rows = await db.post.findMany({
    where: { threadId, societyId },
    include: shape,
    orderBy: [{ writtenAt: 'asc' }, { id: 'asc' }],
    skip: page.skip,
    take: page.take,
  });
  return rows.map((row) => toPost(row, page.day));
}

/** How many posts a thread has. */
export function countPosts(db: Db, { societyId }: Scope, threadId: string): Promise<number> {
  return db.post.count({ where: { threadId, societyId } });
}

/** How many posts of its thread were written before a post; null where it stands in another thread. */
export async function countBefore(db: Db, { societyId }: Scope, threadId: string, id: string): Promise<number | null> {
  const post = await db.post.findFirst({ where: { id, threadId, societyId }, select: { writtenAt: true } });
  if (!post) return null;
  const { writtenAt } = post;
  const before = [{ writtenAt: { lt: writtenAt } }, { writtenAt, id: { lt: id } }];
  return db.post.count({ where: { threadId, societyId, OR: before } });
}

/** One post, or null. */
export async function postById(
  db: Db,
  { societyId }: Scope,
  id: string,
  day: CalendarDate,
): Promise<PostRecord | null> {
  const row = await db.post.findFirst({ where: { id, societyId }, include: shape });
  return row && toPost(row, day);
}

/** Write a post, and return its id. */
export async function createPost(tx: Tx, scope: Scope, threadId: string, body: string, at: Date): Promise<string> {
  const data = { threadId, body, writtenAt: at, byMemberId: scope.memberId, societyId: scope.societyId };
  return (await tx.post.create({ data, select: { id: true } })).id;
}

/** Put new words into a post; the old ones are kept. */
export async function editPost(tx: Tx, { societyId }: Scope, post: PostRecord, body: string, at: Date): Promise<void> {
  await tx.postEdit.create({ data: { societyId, postId: post.id, body: post.body, untilAt: at } });
  await tx.post.updateMany({ where: { id: post.id, societyId }, data: { body, editedAt: at } });
}

type PostChange = { takenBackAt: Date } | { hiddenAt: Date | null; hiddenWhy: string | null };

/** Hide a post, show it again, or mark it as taken back: its words stay. */
export async function changePost(tx: Tx, { societyId }: Scope, id: string, data: PostChange): Promise<void> {
  await tx.post.updateMany({ where: { id, societyId }, data });
}
