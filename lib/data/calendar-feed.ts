import 'server-only';
import { type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Dated } from '@/lib/domain/reminders/dated';
import type { Told } from '@/lib/domain/reminders/feed-told';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import { isHereOn, type Scope } from './scope';

/** The viewer’s feed that works, or null. */
export function feedOfMember(db: Db, { societyId, memberId }: Scope) {
  return db.calendarFeed.findFirst({
    where: { societyId, memberId, revokedAt: null },
    select: { id: true, createdAt: true },
  });
}

/** Make the viewer’s feed, of which only the hash of its token is kept; the database allows one at a time. */
export async function createFeed(tx: Tx, scope: Scope, id: string, tokenHash: string, at: Date): Promise<void> {
  const { societyId, memberId } = scope;
  await tx.calendarFeed.create({ data: { id, societyId, memberId, tokenHash, createdAt: at } });
}

/** Take the viewer’s feeds back; false where none worked. */
export async function revokeFeeds(tx: Tx, { societyId, memberId }: Scope, at: Date): Promise<boolean> {
  const where = { societyId, memberId, revokedAt: null };
  const { count } = await tx.calendarFeed.updateMany({ where, data: { revokedAt: at } });
  return count > 0;
}

/** Whose feed a token opens; null where it was taken back, or they are a member no more. */
export async function feedByToken(
  db: Db,
  tokenHash: string,
  dayIn: (timeZone: string) => CalendarDate,
): Promise<{ readonly feedId: string; readonly memberId: string } | null> {
  const row = await db.calendarFeed.findFirst({
    where: { tokenHash, revokedAt: null },
    select: { id: true, memberId: true, member: { select: { leftOn: true, society: { select: { timeZone: true } } } } },
  });
  if (!row || !isHereOn(row.member.leftOn, dayIn(row.member.society.timeZone))) return null;
  return { feedId: row.id, memberId: row.memberId };
}

/** What a feed has told, locked until the transaction ends: two who read at once tell the same. Null where it was taken back. */
export async function lockFeed(tx: Tx, { societyId }: Scope, feedId: string): Promise<Told[] | null> {
  const [feed] = await tx.$queryRaw<{ id: string }[]>`
    SELECT "id" FROM "CalendarFeed" WHERE "id" = ${feedId}::uuid AND "societyId" = ${societyId}::uuid AND "revokedAt" IS NULL FOR UPDATE`;
  if (!feed) return null;
  const rows = await tx.feedEvent.findMany({ where: { feedId, societyId } });
  return rows.map(({ uid: key, onDay, told, sequence, changedAt, cancelled }) => {
    const { code, to, facts } = told as Pick<Dated, 'code' | 'to' | 'facts'>;
    const dated = { key, code, from: fromDbDay(onDay), to, facts };
    return { dated, sequence, changedAtMs: changedAt.getTime(), cancelled };
  });
}

/** Keep what a feed tells now: only what changed is written. */
export async function keepTold(
  tx: Tx,
  { societyId }: Scope,
  feedId: string,
  { before, now }: { readonly before: readonly Told[]; readonly now: readonly Told[] },
): Promise<void> {
  const was = new Set(before);
  for (const one of now.filter((told) => !was.has(told))) {
    const { dated, sequence, changedAtMs, cancelled } = one;
    const { key: uid, code, from, to, facts } = dated;
    const row = {
      onDay: toDbDay(from),
      told: { code, to, facts },
      sequence,
      changedAt: new Date(changedAtMs),
      cancelled,
    };
    await tx.feedEvent.upsert({
      where: { feedId_uid: { feedId, uid } },
      create: { ...row, societyId, feedId, uid },
      update: row,
    });
  }
  const still = new Set(now.map(({ dated }) => dated.key));
  const dropped = before.map(({ dated }) => dated.key).filter((key) => !still.has(key));
  if (dropped.length) await tx.feedEvent.deleteMany({ where: { feedId, societyId, uid: { in: dropped } } });
}
