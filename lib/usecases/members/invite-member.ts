import 'server-only';
import { randomUUID } from 'node:crypto';
import type { Tx } from '@/lib/data/db';
import { createInvitation, withdrawInvitations } from '@/lib/data/invitation';
import { queueMail } from '@/lib/data/mail';
import { memberById } from '@/lib/data/member';
import type { Scope } from '@/lib/data/scope';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { env } from '@/lib/platform/env';
import { ownToken, sha256Hex } from '@/lib/platform/secret';
import { memberInput } from '@/lib/schemas/members/member';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';

const fortnight = 14 * 24 * 3_600_000;

/** Invite a member by a link that works once, within a fortnight. It is shown once, and mailed where there is an address. */
export const inviteMember = mutation({
  name: 'invite-member',
  allow: canRunSociety,
  input: memberInput,
  write: async (context, { memberId }) => {
    const member = await memberById(context.tx, context.scope, memberId, context.today);
    if (!member) throw new NotFound();
    if (member.hasAccount) refuse('member-has-account');
    if (member.leftOn) refuse('member-has-left');
    return { invitationId: await invite(context, member) };
  },
  show: ({ invitationId }) => ({ link: linkOf(invitationId) }),
});

/** Withdraw a member's unused link. */
export const withdrawInvitation = mutation({
  name: 'withdraw-invitation',
  allow: canRunSociety,
  input: memberInput,
  write: async ({ tx, scope, today, now, note }, { memberId }) => {
    const member = await memberById(tx, scope, memberId, today);
    if (!member) throw new NotFound();
    if (!(await withdrawInvitations(tx, scope, memberId, now))) refuse('no-link-to-withdraw');
    note({ verb: 'withdrawn', thing: 'invitation', thingId: null, forMemberId: memberId });
    return { memberId };
  },
});

/**
 * An invitation's link. Its token is worked out from the id and this installation's secret, so that the reply kept
 * for a form sent twice needs the id only.
 */
export function linkOf(invitationId: string): string {
  return `${env().nextAuthUrl}/join/${tokenOf(invitationId)}`;
}

function tokenOf(invitationId: string): string {
  return ownToken(`invitation ${invitationId}`);
}

/** Make the invitation and return its id, inside the caller's transaction. */
export async function invite(
  { tx, scope, now, note }: Pick<WriteContext, 'tx' | 'scope' | 'now' | 'note'>,
  member: { id: string; name: string; email: string | null },
): Promise<string> {
  const id = randomUUID();
  await createInvitation(tx, scope, {
    id,
    memberId: member.id,
    tokenHash: sha256Hex(tokenOf(id)),
    expiresAt: new Date(now.getTime() + fortnight),
    at: now,
  });
  if (member.email) await mailInvitation(tx, scope, { ...member, email: member.email }, linkOf(id));
  note({ verb: 'invited', thing: 'invitation', thingId: id, forMemberId: member.id });
  return id;
}

async function mailInvitation(
  tx: Tx,
  scope: Scope,
  member: { name: string; email: string },
  link: string,
): Promise<void> {
  const body = `Dear ${member.name},\n\n${scope.societyName} keeps its plots, rotation and deliveries on Barrowmoot. This link lets you in; it works once, within a fortnight:\n\n${link}\n`;
  await queueMail(tx, [
    { to: member.email, subject: `Your way into ${scope.societyName}`, body, societyId: scope.societyId },
  ]);
}
