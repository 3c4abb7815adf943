import 'server-only';
import { z } from 'zod';
import { canEnter } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { changedLately, rulesChanged } from './changed-lately';
import { dueOfMember, ownHoldings } from './due';

/** What wants doing this week, most pressing first. */
export const readWeek = query({
  name: 'read-week',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const holdings = await ownHoldings(context);
    return {
      rules: await rulesChanged(context),
      lately: await changedLately(context, holdings),
      due: await dueOfMember(context, holdings),
      today: context.today,
      timeZone: context.scope.timeZone,
      units: context.scope.units,
      holds: holdings.length > 0,
    };
  },
});
