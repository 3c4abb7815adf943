import 'server-only';
import { z } from 'zod';
import { holdingsOfMember } from '@/lib/data/holding';
import { memberById } from '@/lib/data/member';
import { canEnter } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';

/** Who the viewer is in this society: for the head line, and for their own page. */
export const readStanding = query({
  name: 'read-standing',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const member = await memberById(db, scope, scope.memberId, today);
    if (!member) throw new NotFound();
    const holdings = await holdingsOfMember(db, scope, scope.memberId, today);
    const { societyName, slug, roles, units, memberName } = scope;
    const plots = holdings.flatMap((holding) => holding.plots.map(({ number }) => number));
    return {
      societyName,
      slug,
      roles,
      units,
      memberName,
      plots,
      shared: holdings.some(({ memberIds }) => memberIds.length > 1),
      member,
      today,
    };
  },
});
