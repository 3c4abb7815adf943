import 'server-only';
import type { Db, Tx } from './db';
import { isHereOn, type Scope } from './scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';

/** A place on the roll: a member for themselves, or for a holding of theirs. */
export type Place = { readonly memberId: string; readonly holdingId: string | null };

/** Write the roll of the day on which a question opens. It is never changed. */
export async function writeRoll(
  tx: Tx,
  { societyId }: Scope,
  ballotId: string,
  places: readonly Place[],
): Promise<void> {
  await tx.ballotRoll.createMany({ data: places.map((place) => ({ ...place, societyId, ballotId })) });
}

/** Where the viewer stands on the rolls of some questions. */
export async function ownPlaces(db: Db, { societyId, memberId }: Scope, ballotIds: readonly string[]) {
  return db.ballotRoll.findMany({
    where: { societyId, memberId, ballotId: { in: [...ballotIds] } },
    select: { ballotId: true, holdingId: true },
    orderBy: { id: 'asc' },
  });
}

/** The places of members without an account who are members still: the secretary enters their hands. */
export async function placesWithoutAccount(db: Db, { societyId }: Scope, ballotId: string, today: CalendarDate) {
  const rows = await db.ballotRoll.findMany({
    where: { societyId, ballotId, member: { accountId: null } },
    select: { id: true, memberId: true, holdingId: true, member: { select: { name: true, leftOn: true } } },
    orderBy: { member: { name: 'asc' } },
  });
  return rows
    .filter(({ member }) => isHereOn(member.leftOn, today))
    .map(({ id, memberId, holdingId, member }) => ({ id, memberId, holdingId, name: member.name }));
}
