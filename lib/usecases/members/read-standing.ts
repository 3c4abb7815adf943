import 'server-only';
import { z } from 'zod';
import { plotsOfViewer } from '@/lib/data/holding';
import { memberById } from '@/lib/data/member';
import { canEnter } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { NotFound } from '../refusal';

/** Who the viewer is in this society: for the head line of every page. */
export const readStanding = query({
  name: 'read-standing',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const { societyName, slug, roles, units, memberId, memberName } = scope;
    return { societyName, slug, roles, units, memberId, memberName, ...(await plotsOfViewer(db, scope, today)) };
  },
});

/** One's own name, contact and units. */
export const readOwnDetails = query({
  name: 'read-own-details',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const member = await memberById(db, scope, scope.memberId, today);
    if (!member) throw new NotFound();
    return { member, units: scope.units };
  },
});
