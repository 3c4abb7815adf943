import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { toDbDay } from './day';
import type { Db, Tx } from './db';
import { type Mail, queueMail } from './mail';
import type { Scope } from './scope';

/** Whether the viewer has the weekly letter, and has an address for it. */
export async function letterWishOf(db: Db, { societyId, memberId: id }: Scope) {
  const row = await db.member.findFirst({
    where: { id, societyId },
    select: { email: true, digestWish: { select: { wanted: true } } },
  });
  return { wanted: row?.digestWish[0]?.wanted ?? false, hasAddress: row?.email != null };
}

/** Say whether the viewer wants it. The hash is of the token that ends it without signing in. */
export async function setLetterWish(
  tx: Tx,
  { societyId, memberId }: Scope,
  { wanted, tokenHash, at: changedAt }: { readonly wanted: boolean; readonly tokenHash: string; readonly at: Date },
): Promise<void> {
  await tx.digestWish.upsert({
    where: { memberId },
    create: { societyId, memberId, wanted, tokenHash, changedAt },
    update: { wanted, changedAt },
  });
}

/** Whose letter a token ends, and whether they still have it; null where it is nobody’s. */
export function wishByToken(db: Db, tokenHash: string) {
  return db.digestWish.findFirst({
    where: { tokenHash },
    select: { memberId: true, wanted: true, member: { select: { society: { select: { name: true } } } } },
  });
}

/** End it. */
export async function endLetter(tx: Tx, tokenHash: string, at: Date): Promise<void> {
  await tx.digestWish.updateMany({ where: { tokenHash, wanted: true }, data: { wanted: false, changedAt: at } });
}

/** Every society, with where its days begin. */
export function societiesWithZones(db: Db) {
  return db.society.findMany({ select: { id: true, timeZone: true }, orderBy: { id: 'asc' } });
}

/** Members who want the letter of a week and have none yet, a page of them by id. */
export async function membersWithoutLetter(
  db: Db,
  { societyId, monday, after, take }: { societyId: string; monday: CalendarDate; after: string; take: number },
): Promise<string[]> {
  const rows = await db.$queryRaw<{ id: string }[]>`
    SELECT w."memberId" AS "id" FROM "DigestWish" w JOIN "Member" m ON m."id" = w."memberId"
    WHERE w."societyId" = ${societyId}::uuid AND w."wanted" AND m."email" IS NOT NULL AND m."erasedAt" IS NULL
      AND (m."leftOn" IS NULL OR m."leftOn" > ${toDbDay(monday)}) AND w."memberId" > ${after}::uuid
      AND NOT EXISTS (SELECT 1 FROM "DigestSent" s WHERE s."memberId" = w."memberId" AND s."monday" = ${toDbDay(monday)})
    ORDER BY w."memberId" LIMIT ${take}`;
  return rows.map(({ id }) => id);
}

/**
 * Keep that a member's letter of a week is made, and queue its mail: both or neither, and only the first time. Without words it is
 * settled all the same. Answers whether it was the first time.
 */
export async function keepLetter(
  tx: Tx,
  { societyId, memberId }: Scope,
  { monday, at, mail }: { readonly monday: CalendarDate; readonly at: Date; readonly mail: Mail | null },
): Promise<boolean> {
  const first = await tx.$executeRaw`
    INSERT INTO "DigestSent" ("societyId", "memberId", "monday", "at")
    VALUES (${societyId}::uuid, ${memberId}::uuid, ${toDbDay(monday)}, ${at}) ON CONFLICT DO NOTHING`;
  if (first === 0) return false;
  if (mail) {
    const [mailId = null] = await queueMail(tx, [mail]);
    await tx.digestSent.updateMany({ where: { memberId, societyId, monday: toDbDay(monday) }, data: { mailId } });
  }
  return true;
}

/** The address of a member who still wants the letter and still is one; null otherwise. */
export async function letterAddress(tx: Tx, { societyId, memberId: id }: Scope): Promise<string | null> {
  const row = await tx.member.findFirst({
    where: { id, societyId, digestWish: { some: { wanted: true } } },
    select: { email: true },
  });
  return row?.email ?? null;
}

/** Queue the making of letters, a batch a job. */
export async function queueLetters(
  tx: Tx,
  batch: { readonly monday: CalendarDate; readonly memberIds: readonly string[] },
): Promise<void> {
  await tx.$executeRaw`SELECT graphile_worker.add_job('weekly-letters', ${JSON.stringify(batch)}::json)`;
}
