import 'server-only';
import { holdingById } from '@/lib/data/holding';
import { appendSharing, sharingWords } from '@/lib/data/result-sharing';
import { canShareResults } from '@/lib/domain/policy/sharing-results';
import { canEnter } from '@/lib/domain/policy/standing';
import { saySharingInput } from '@/lib/schemas/notes/notes';
import { mutation } from '../operation';
import { NotFound } from '../refusal';

/** Let the results of one's own holding be compared, or no longer: it holds from the next page on. */
export const saySharing = mutation({
  name: 'say-sharing',
  allow: canEnter,
  input: saySharingInput,
  write: async ({ tx, scope, today, now, note }, { holdingId, shares }) => {
    const holding = await holdingById(tx, scope, holdingId, today);
    if (!holding || !canShareResults(scope, holding)) throw new NotFound();
    const words = await sharingWords(tx, scope, today);
    const said = words.find((one) => one.holdingId === holdingId && one.memberId === scope.memberId)?.shares ?? null;
    if (said === shares) return { holdingId };
    await appendSharing(tx, scope, { holdingId, shares, at: now });
    const thing = { thing: 'result sharing', thingId: holdingId, forHoldingId: holdingId };
    note({ verb: shares ? 'agreed' : 'withdrew', ...thing, before: { shares: said }, after: { shares } });
    return { holdingId };
  },
});
