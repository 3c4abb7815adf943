'use server';

import { submitForm } from '@/app/_server/form-action';
import type { FormState } from '@/app/_ui/form-state';
import { inviteMember, withdrawInvitation } from '@/lib/usecases/members/invite-member';
import { addMember, changeMember, eraseMember, memberLeaves } from '@/lib/usecases/members/keep-members';
import { handOver, setMemberRoles } from '@/lib/usecases/members/offices';

export async function addMemberAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  const told = (link: string | null) => (link ? `Added. Their link, shown this once: ${link}` : 'Added.');
  return submitForm(addMember, { slug, form, done: ({ link }) => ({ message: told(link) }) });
}

export async function inviteAction(slug: string, memberId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(inviteMember, {
    slug,
    form,
    fixed: { memberId },
    done: ({ link }) => ({ message: `The link works once, within a fortnight, and is shown this once: ${link}` }),
  });
}

export async function withdrawAction(slug: string, memberId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(withdrawInvitation, {
    slug,
    form,
    fixed: { memberId },
    done: () => ({ message: 'The link is withdrawn and lets nobody in.' }),
  });
}

export async function changeMemberAction(
  slug: string,
  memberId: string,
  _: FormState,
  form: FormData,
): Promise<FormState> {
  return submitForm(changeMember, { slug, form, fixed: { memberId }, done: () => ({ message: 'Saved.' }) });
}

export async function rolesAction(slug: string, memberId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(setMemberRoles, {
    slug,
    form,
    fixed: { memberId },
    done: () => ({ message: 'The offices are set.' }),
  });
}

export async function handOverAction(slug: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(handOver, {
    slug,
    form,
    done: ({ keep }) => (keep ? { message: 'There are two secretaries now.' } : { redirectTo: `/${slug}` }),
  });
}

export async function leaveAction(slug: string, memberId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(memberLeaves, {
    slug,
    form,
    fixed: { memberId },
    done: () => ({ message: 'Entered. The ground’s history stays.' }),
  });
}

export async function eraseAction(slug: string, memberId: string, _: FormState, form: FormData): Promise<FormState> {
  return submitForm(eraseMember, {
    slug,
    form,
    fixed: { memberId },
    done: () => ({ redirectTo: `/${slug}/office/members` }),
  });
}
