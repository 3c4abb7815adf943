import 'server-only';
import type { Thread } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type Topic, topicTyped } from '@/lib/domain/board/topic';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A notice or a talk. */
export type ThreadRecord = {
  readonly id: string;
  readonly kind: 'notice' | 'talk';
  readonly title: string;
  readonly topic: Topic | null;
  readonly byMemberId: string;
  readonly createdAt: Date;
  readonly lastPostAt: Date;
  readonly pinned: boolean;
  readonly endsOn: CalendarDate | null;
  readonly mustRead: boolean;
  readonly lockedAt: Date | null;
  readonly lockedWhy: string | null;
};

export function toThread(row: Thread): ThreadRecord {
  const { id, title, byMemberId, createdAt, lastPostAt, pinned, mustRead, lockedAt, lockedWhy } = row;
  return {
    ...{ id, title, byMemberId, createdAt, lastPostAt, pinned, mustRead, lockedAt, lockedWhy },
    kind: row.kind === 'notice' ? 'notice' : 'talk',
    topic: row.topicKey === null ? null : topicTyped(`${row.topic}:${row.topicKey}`),
    endsOn: row.endsOn && fromDbDay(row.endsOn),
  };
}

/** One thread, or null. */
export async function threadById(db: Db, { societyId }: Scope, id: string): Promise<ThreadRecord | null> {
  const row = await db.thread.findFirst({ where: { id, societyId } });
  return row && toThread(row);
}

/** One thread, locked until the transaction ends: a reply and a lock that cross come one after the other. */
export async function lockThread(tx: Tx, scope: Scope, id: string): Promise<ThreadRecord | null> {
  await tx.$queryRaw`SELECT 1 FROM "Thread" WHERE "id" = ${id}::uuid AND "societyId" = ${scope.societyId}::uuid FOR UPDATE`;
  return threadById(tx, scope, id);
}

export type NewThread = Pick<ThreadRecord, 'kind' | 'title' | 'topic' | 'pinned' | 'endsOn' | 'mustRead'>;

/** Begin a thread, and return its id. */
export async function createThread(tx: Tx, scope: Scope, thread: NewThread, at: Date): Promise<string> {
  const { topic, endsOn, ...facts } = thread;
  const about = topic ? { topic: topic.kind, topicKey: topic.key } : {};
  const made = { createdAt: at, lastPostAt: at, byMemberId: scope.memberId, societyId: scope.societyId };
  const data = { ...facts, ...about, ...made, endsOn: endsOn && toDbDay(endsOn) };
  return (await tx.thread.create({ data, select: { id: true } })).id;
}

type ThreadChange = Partial<
  Pick<ThreadRecord, 'lastPostAt' | 'pinned' | 'endsOn' | 'mustRead' | 'lockedAt' | 'lockedWhy'>
>;

/** Change how a thread stands; its title and topic stay. */
export async function changeThread(tx: Tx, { societyId }: Scope, id: string, change: ThreadChange): Promise<void> {
  const { endsOn, ...rest } = change;
  const data = { ...rest, ...(endsOn === undefined ? {} : { endsOn: endsOn && toDbDay(endsOn) }) };
  await tx.thread.updateMany({ where: { id, societyId }, data });
}
