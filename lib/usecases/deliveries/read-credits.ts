import 'server-only';
import { z } from 'zod';
import { creditedMaterials, creditEntriesOf, creditsOf } from '@/lib/data/credit';
import { byNumber, holdingsOfMember, holdingsOn } from '@/lib/data/holding';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { canEnter } from '@/lib/domain/policy/standing';
import { dayIn } from '@/lib/platform/clock';
import { query, type ReadContext } from '../operation';
import { creditsOnSite } from './credits-on-site';

/** Credits by material: every holding with ground, by its plots; what lapsed; the largest, and their sum; and how one's own came. */
export const readCredits = query({
  name: 'read-credits',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { db, scope, today } = context;
    const [holdings, own] = await Promise.all([
      holdingsOn(db, scope, today),
      holdingsOfMember(db, scope, scope.memberId, today),
    ]);
    const mine = new Set(own.map(({ id }) => id));
    const entries = await ownEntries(context, own);
    const materials = await creditedMaterials(db, scope);
    const each = materials.map(async (key) => {
      const credits = await creditsOf(db, scope, key);
      const known = holdings.map(({ id, plots }) => ({
        ...{ id, plots: plots.map(({ number }) => number), mine: mine.has(id), millionths: credits.get(id) ?? 0 },
      }));
      const here = new Set(['', ...holdings.map(({ id }) => id)]);
      const former = [...credits]
        .filter(([id, millionths]) => !here.has(id) && millionths !== 0)
        .map(([id, millionths]) => ({ id, plots: [], mine: false, millionths }));
      const rows = [...known, ...former].sort(
        (a, b) => b.millionths - a.millionths || byNumber(a.plots[0] ?? '', b.plots[0] ?? ''),
      );
      const name = materialOf(key)?.name ?? key;
      return {
        key,
        name,
        rows,
        ...creditsOnSite(credits),
        own: entries.filter(({ materialKey }) => materialKey === key),
      };
    });
    return Promise.all(each);
  },
});

async function ownEntries(
  { db, scope }: ReadContext,
  own: readonly { readonly id: string; readonly plots: readonly { readonly number: string }[] }[],
) {
  const plotsOf = new Map(own.map(({ id, plots }) => [id, plots.map(({ number }) => number)]));
  const rows = await creditEntriesOf(db, scope, [...plotsOf.keys()]);
  return rows.map(({ holdingId, at, ...entry }) => ({
    ...entry,
    plots: plotsOf.get(holdingId) ?? [],
    on: dayIn(scope.timeZone, at),
  }));
}
