import 'server-only';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** Keep an invitation's hashed token, and withdraw the member's earlier ones. */
export async function createInvitation(
  tx: Tx,
  scope: Scope,
  given: { id: string; memberId: string; tokenHash: string; expiresAt: Date; at: Date },
): Promise<void> {
  const { id, memberId, tokenHash, expiresAt, at } = given;
  await withdrawInvitations(tx, scope, memberId, at);
  await tx.invitation.create({ data: { id, societyId: scope.societyId, memberId, tokenHash, expiresAt } });
}

/** Withdraw a member's links that were not used yet, and return how many there were. */
export async function withdrawInvitations(tx: Tx, scope: Scope, memberId: string, at: Date): Promise<number> {
  const { count } = await tx.invitation.updateMany({
    where: { societyId: scope.societyId, memberId, usedAt: null, withdrawnAt: null },
    data: { withdrawnAt: at },
  });
  return count;
}

// The two below are for somebody who is not a member yet; the token is their leave.

/** What an invitation says: whom it invites to which society, and whether it can still be used. */
export async function invitationByToken(db: Db, tokenHash: string, now: Date) {
  const row = await db.invitation.findUnique({
    where: { tokenHash },
    include: {
      member: { select: { name: true, email: true, accountId: true, leftOn: true } },
      society: { select: { name: true, slug: true } },
    },
  });
  if (!row) return null;
  const { member, society } = row;
  const open =
    row.usedAt === null &&
    row.withdrawnAt === null &&
    row.expiresAt > now &&
    member.accountId === null &&
    member.leftOn === null;
  return { open, memberName: member.name, email: member.email, societyName: society.name, slug: society.slug };
}

/** Use an invitation up and give its member an account: once, whoever else tries. */
export async function useInvitation(tx: Tx, tokenHash: string, accountId: string, now: Date) {
  const [used] = await tx.invitation.updateManyAndReturn({
    where: {
      tokenHash,
      usedAt: null,
      withdrawnAt: null,
      expiresAt: { gt: now },
      member: { accountId: null, leftOn: null },
    },
    data: { usedAt: now },
    select: { memberId: true, societyId: true },
  });
  if (!used) return null;
  const already = await tx.member.count({ where: { societyId: used.societyId, accountId } });
  if (already) return 'member-already' as const;
  await tx.member.update({ where: { id: used.memberId }, data: { accountId } });
  await tx.auditRow.create({
    data: {
      societyId: used.societyId,
      actorMemberId: used.memberId,
      verb: 'joined',
      thing: 'member',
      thingId: used.memberId,
      at: now,
    },
  });
  return used;
}
