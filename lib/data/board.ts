import 'server-only';
import type { Topic } from '@/lib/domain/board/topic';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { toDbDay } from './day';
import { Prisma } from '@/generated/prisma/client';
import type { Db } from './db';
import { type Author, nameUnder } from './post';
import type { Scope } from './scope';
import { type ThreadRecord, toThread } from './thread';

/** A thread as the board lists it. */
export type ListedThread = ThreadRecord & {
  readonly by: string | null;
  readonly posts: number;
  readonly isUnread: boolean;
  readonly isConfirmed: boolean;
};

type Asked = { readonly skip: number; readonly take: number; readonly today: CalendarDate };

const withReader = ({ memberId }: Scope) =>
  ({
    by: { select: { name: true, leftOn: true, nameStays: true } },
    reads: { where: { memberId } },
    _count: { select: { posts: true } },
  }) as const satisfies Prisma.ThreadInclude;

type Row = Prisma.ThreadGetPayload<{ include: ReturnType<typeof withReader> }>;

function toListed(row: Row, today: CalendarDate): ListedThread {
  const [read] = row.reads;
  return {
    ...toThread(row),
    by: nameUnder(row.by satisfies Author, today),
    posts: row._count.posts,
    isUnread: !read || read.readToAt < row.lastPostAt,
    isConfirmed: read?.confirmedAt != null,
  };
}

/** Notices whose last day has not passed: those that must be read first, then those that are pinned, then the newest. */
export async function noticesStanding(db: Db, scope: Scope, today: CalendarDate): Promise<ListedThread[]> {
  const rows = await db.thread.findMany({
    where: {
      societyId: scope.societyId,
      kind: 'notice',
      OR: [{ endsOn: null, pinned: true }, { endsOn: { gte: toDbDay(today) } }, { endsOn: null, mustRead: true }],
    },
    include: withReader(scope),
    orderBy: [{ mustRead: 'desc' }, { pinned: 'desc' }, { createdAt: 'desc' }, { id: 'asc' }],
    take: 50,
  });
  return rows.map((row) => toListed(row, today));
}

/** Threads by when they were last written in, the latest first; of one topic, or of any. */
export async function threadsLately(
  db: Db,
  scope: Scope,
  { skip, take, today }: Asked,
  topic: Topic | null,
): Promise<ListedThread[]> {
  const rows = await db.thread.findMany({
    where: { societyId: scope.societyId, ...(topic ? { topic: topic.kind, topicKey: topic.key } : {}) },
    include: withReader(scope),
    orderBy: [{ lastPostAt: 'desc' }, { id: 'desc' }],
    skip,
    take,
  });
  return rows.map((row) => toListed(row, today));
}

/** What others have begun since an instant and the viewer has not opened, the newest first; nothing whose first words are hidden or taken back. */
export async function threadsBegun(db: Db, { societyId, memberId }: Scope, since: Date, take: number) {
  return db.$queryRaw<{ id: string; title: string; kind: ThreadRecord['kind'] }[]>`
    SELECT t."id", t."title", t."kind" FROM "Thread" t,
      LATERAL (SELECT * FROM "Post" p WHERE p."threadId" = t."id" ORDER BY p."writtenAt", p."id" LIMIT 1) first
    WHERE t."societyId" = ${societyId}::uuid AND t."createdAt" > ${since} AND t."byMemberId" <> ${memberId}::uuid
      AND first."hiddenAt" IS NULL AND first."takenBackAt" IS NULL
      AND NOT EXISTS (SELECT 1 FROM "ThreadRead" r WHERE r."threadId" = t."id" AND r."memberId" = ${memberId}::uuid)
    ORDER BY t."createdAt" DESC, t."id" LIMIT ${take}`;
}

/** A post that was found, with the words around what was looked for; \u0002 and \u0003 stand around each word that fits. */
export type FoundPost = {
  readonly postId: string;
  readonly threadId: string;
  readonly title: string;
  readonly by: string | null;
  readonly writtenAt: Date;
  readonly excerpt: string;
};

type FoundRow = Omit<FoundPost, 'by'> & Author;

/**
 * Posts that hold words, or stand in a thread whose title does; what is hidden or was taken back is found by nobody.
 * The words are read as people type them: quotation marks, or, a minus before a word.
 */
export async function searchPosts(
  db: Db,
  { societyId }: Scope,
  words: string,
  { today, take }: { readonly today: CalendarDate; readonly take: number },
): Promise<FoundPost[]> {
  const rows = await db.$queryRaw<FoundRow[]>`
    WITH asked AS (SELECT websearch_to_tsquery('english', ${words}) AS q), hits AS (
      SELECT p."id", ts_rank(to_tsvector('english', p."body"), q) AS rank FROM "Post" p, asked
      WHERE p."societyId" = ${societyId}::uuid AND to_tsvector('english', p."body") @@ q
      UNION ALL
      SELECT f."id", 2 * ts_rank(to_tsvector('english', t."title"), q) FROM "Thread" t, asked,
        LATERAL (SELECT p."id" FROM "Post" p WHERE p."threadId" = t."id" ORDER BY p."writtenAt", p."id" LIMIT 1) f
      WHERE t."societyId" = ${societyId}::uuid AND to_tsvector('english', t."title") @@ q
    ), best AS (
      SELECT h."id", sum(h.rank) AS rank FROM hits h JOIN "Post" p ON p."id" = h."id"
      WHERE p."hiddenAt" IS NULL AND p."takenBackAt" IS NULL GROUP BY h."id" ORDER BY rank DESC, h."id" DESC LIMIT ${take}
    )
    SELECT p."id" AS "postId", p."threadId", t."title", p."writtenAt", m."name", m."leftOn", m."nameStays",
      ts_headline('english', p."body", q, ${headline}) AS "excerpt"
    FROM best b JOIN "Post" p ON p."id" = b."id" JOIN "Thread" t ON t."id" = p."threadId"
      JOIN "Member" m ON m."id" = p."byMemberId", asked
    ORDER BY b.rank DESC, p."writtenAt" DESC, p."id"`;
  return rows.map(({ name, leftOn, nameStays, ...found }) => ({
    ...found,
    by: nameUnder({ name, leftOn, nameStays }, today),
  }));
}

const headline = 'StartSel=\u0002, StopSel=\u0003, MaxFragments=2, MinWords=6, MaxWords=18, FragmentDelimiter=" … "';
