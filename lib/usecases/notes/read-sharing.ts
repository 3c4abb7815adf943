import 'server-only';
import { z } from 'zod';
import { holdingsOfMember } from '@/lib/data/holding';
import { sharingHoldings, sharingWords } from '@/lib/data/result-sharing';
import { canEnter } from '@/lib/domain/policy/standing';
import { query } from '../operation';

/** Whether one's own holdings let their results be compared, and who of their holders said what. */
export const readSharing = query({
  name: 'read-sharing',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const [holdings, words, sharing] = await Promise.all([
      holdingsOfMember(db, scope, scope.memberId, today),
      sharingWords(db, scope, today),
      sharingHoldings(db, scope, today),
    ]);
    return {
      timeZone: scope.timeZone,
      holdings: holdings.map(({ id, plots, members }) => ({
        id,
        plots: plots.map(({ number }) => number),
        isShared: sharing.has(id),
        words: members.map((member) => {
          const said = words.find(({ holdingId, memberId }) => holdingId === id && memberId === member.id);
          const isMine = member.id === scope.memberId;
          return { memberId: member.id, name: member.name, isMine, shares: said?.shares ?? null, at: said?.at ?? null };
        }),
      })),
    };
  },
});
