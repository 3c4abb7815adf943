import 'server-only';
import type { Tx } from '@/lib/data/db';
import { createInvitation } from '@/lib/data/invitation';
import { queueMail } from '@/lib/data/mail';
import { memberById } from '@/lib/data/member';
import type { Scope } from '@/lib/data/scope';
import { canRunSociety } from '@/lib/domain/policy/standing';
import { env } from '@/lib/platform/env';
import { newToken } from '@/lib/platform/secret';
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
    return { link: await invite(context, member) };
  },
});

/** Make the invitation and return its link, inside the caller's transaction. */
export async function invite(
  { tx, scope, now, note }: Pick<WriteContext, 'tx' | 'scope' | 'now' | 'note'>,
  member: { id: string; name: string; email: string | null },
): Promise<string> {
  const { token, tokenHash } = newToken();
  const link = `${env().nextAuthUrl}/join/${token}`;
  const id = await createInvitation(tx, scope, {
    memberId: member.id,
    tokenHash,
    expiresAt: new Date(now.getTime() + fortnight),
    at: now,
  });
  if (member.email) await mailInvitation(tx, scope, { ...member, email: member.email }, link);
  note({ verb: 'invited', thing: 'invitation', thingId: id, forMemberId: member.id });
  return link;
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
