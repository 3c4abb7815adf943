import 'server-only';
import { z } from 'zod';
import { nameStaysOf, setNameStays } from '@/lib/data/member';
import { canEnter } from '@/lib/domain/policy/standing';
import { nameStaysInput } from '@/lib/schemas/board/board';
import { mutation, query } from '../operation';

/** Whether one’s name stays on what one wrote when one has left. */
export const readNameStays = query({
  name: 'read-name-stays',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope }) => ({ nameStays: await nameStaysOf(db, scope) }),
});

/** Choose whether one’s name stays on what one wrote when one has left. */
export const chooseNameStays = mutation({
  name: 'choose-name-stays',
  allow: canEnter,
  input: nameStaysInput,
  write: async ({ tx, scope, note }, { nameStays }) => {
    await setNameStays(tx, scope, nameStays);
    note({ verb: 'chose', thing: 'member', thingId: scope.memberId, after: { nameStays } });
    return {};
  },
});
