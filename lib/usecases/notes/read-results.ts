import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { cropsHarvested } from '@/lib/data/harvest';
import type { Crop } from '@/lib/domain/catalogue/crops';
import { leastHolders } from '@/lib/domain/comparison/shown-cells';
import { canEnter } from '@/lib/domain/policy/standing';
import { resultsInput } from '@/lib/schemas/notes/notes';
import { query } from '../operation';
import { type At, resultHoldings, type ResultHoldings } from './bed-results';
import { resultsOf } from './results-of';

/** What beds gave, by how they were treated: of neighbours who let it be compared, three or more, and the viewer's own. */
export const readResults = query({
  name: 'read-results',
  allow: canEnter,
  input: resultsInput,
  read: async (context, { crop, season, by, variety }) => {
    const { scope } = context;
    const holdings = await resultHoldings(context);
    const crops = await cropsOf(context.db, scope);
    const choice = await cropsToCompare(context, holdings, crops);
    const cropKey = crop ?? choice[0]?.key ?? null;
    const asked = { season: season ?? null, question: by ?? null, variety: variety ?? null };
    return {
      units: scope.units,
      crops: choice,
      results: cropKey === null ? null : await resultsOf(context, { crops, holdings }, { ...asked, cropKey }),
      /** Whether all of the viewer's own holdings are shared; null where they have none. */
      sharesOwn: holdings.own.size ? [...holdings.own].every((id) => holdings.shared.has(id)) : null,
    };
  },
});

/** Crops that three neighbours or more harvested, and the viewer's own; those of most first. */
async function cropsToCompare({ db, scope }: At, { shared, own }: ResultHoldings, crops: ReadonlyMap<string, Crop>) {
  const [theirs, mine] = await Promise.all([
    cropsHarvested(
      db,
      scope,
      [...shared].filter((id) => !own.has(id)),
    ),
    cropsHarvested(db, scope, [...own]),
  ]);
  const told = theirs.filter(({ holdings }) => holdings >= leastHolders);
  const keys = [...told.toSorted((a, b) => b.holdings - a.holdings), ...mine].map(({ cropKey }) => cropKey);
  return [...new Set(keys)].map((key) => ({ key, name: crops.get(key)?.name ?? key }));
}
