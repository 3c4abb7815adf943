import 'server-only';
import { z } from 'zod';
import { memberById, membersOn } from '@/lib/data/member';
import { canReadCommitteePapers, canRunSociety } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';

/** The members' list, for the committee. */
export const listMembers = query({
  name: 'list-members',
  allow: canReadCommitteePapers,
  input: z.object({}),
  read: ({ db, scope, today }) => membersOn(db, scope, today),
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
