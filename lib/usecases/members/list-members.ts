import 'server-only';
import { z } from 'zod';
import { memberById, membersOn } from '@/lib/data/member';
import { canReadCommitteePapers, canRunSociety } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';

/** The members' list, for the committee: all, or those whose name, address, telephone or plot holds what was typed. */
export const listMembers = query({
  name: 'list-members',
  allow: canReadCommitteePapers,
  input: z.object({ q: z.string().max(100).optional().catch(undefined) }),
  read: async ({ db, scope, today }, { q = '' }) => {
    const typed = q.trim().toLowerCase();
    const members = await membersOn(db, scope, today);
    return members.filter(({ name, email, phone, plots }) =>
      [name, email ?? '', phone ?? '', ...plots].some((text) => text.toLowerCase().includes(typed)),
    );
  },
});

/** One member with their contact details, for the secretary. */
export const readMember = query({
  name: 'read-member',
  allow: canRunSociety,
  input: z.object({ memberId: z.uuid() }),
  read: async ({ db, scope, today }, { memberId }) => {
    const member = await memberById(db, scope, memberId, today);
    if (!member) throw new NotFound();
    return member;
  },
});
