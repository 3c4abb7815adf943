import 'server-only';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** What a holder of today has said last of sharing their results; null where they have said nothing. */
export type SharingWord = {
  readonly holdingId: string;
  readonly memberId: string;
  readonly shares: boolean | null;
  readonly at: Date | null;
};

/** The last word of each holder of a day, holding by holding. */
export async function sharingWords(db: Db, { societyId }: Scope, day: CalendarDate): Promise<SharingWord[]> {
  const at = toDbDay(day);
  return db.$queryRaw<SharingWord[]>`
    SELECT DISTINCT h."holdingId", h."memberId", said."shares", said."at" FROM "HoldingMember" h
      JOIN "Member" m ON m."id" = h."memberId" AND (m."leftOn" IS NULL OR m."leftOn" > ${at}::date)
      LEFT JOIN LATERAL (
        SELECT s."shares", s."at" FROM "ResultSharing" s
        WHERE s."societyId" = h."societyId" AND s."holdingId" = h."holdingId" AND s."byMemberId" = h."memberId"
        ORDER BY s."at" DESC, s."id" DESC LIMIT 1) said ON true
    WHERE h."societyId" = ${societyId}::uuid
      AND h."fromOn" <= ${at}::date AND (h."untilOn" IS NULL OR h."untilOn" > ${at}::date)
    ORDER BY h."holdingId", h."memberId"`;
}

/** The holdings whose results may be compared on a day: one of their holders agrees, and none says no. */
export async function sharingHoldings(db: Db, scope: Scope, day: CalendarDate): Promise<ReadonlySet<string>> {
  const words = await sharingWords(db, scope, day);
  const said = (shares: boolean) => new Set(words.flatMap((one) => (one.shares === shares ? [one.holdingId] : [])));
  const no = said(false);
  return new Set([...said(true)].filter((id) => !no.has(id)));
}

/** Say whether the viewer lets a holding's results be compared. */
export async function appendSharing(
  tx: Tx,
  { societyId, memberId: byMemberId }: Scope,
  said: { readonly holdingId: string; readonly shares: boolean; readonly at: Date },
): Promise<void> {
  await tx.resultSharing.create({ data: { ...said, societyId, byMemberId } });
}
