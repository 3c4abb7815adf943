import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { appendOwnSowing } from '@/lib/data/seed-sowing';
import { canEnter } from '@/lib/domain/policy/standing';
import { ownSowingOf } from '@/lib/domain/seed/own-sowing';
import { changeSowingInput } from '@/lib/schemas/seed/tin';
import { mutation } from '../operation';
import { refuse } from '../refusal';

/** Say how one sows a crop oneself; what is left empty is as printed. The book notes that it was said, never what. */
export const changeSowing = mutation({
  name: 'change-sowing',
  allow: canEnter,
  input: changeSowingInput,
  write: async ({ tx, scope, now, note }, { cropKey, rowsCm, inRowCm, from, germinationPercent, marginPercent }) => {
    if (!(await cropsOf(tx, scope)).has(cropKey))
      refuse('crop-unknown', { field: 'cropKey', numbers: { crop: cropKey } });
    if ((rowsCm === null) !== (inRowCm === null))
      refuse('both-distances', { field: rowsCm === null ? 'rowsCm' : 'inRowCm' });
    const own = ownSowingOf({ apart: { rowsCm, inRowCm }, from, germinationPercent, marginPercent });
    await appendOwnSowing(tx, scope, cropKey, own, now);
    note({ verb: own ? 'set' : 'put back', thing: 'way of sowing', thingId: null });
    return { isOwn: own !== null };
  },
});
