import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import type { HoldingOnDay } from '@/lib/data/holding';
import type { SeedItemRecord } from '@/lib/data/seed-order';
import { matchList, type Wanted } from '@/lib/domain/seed/match-list';
import type { ReadContext } from '../operation';
import { comingSeason } from './coming-season';
import { listOf } from './list-of';
import { mostWanted } from './want-seed';

/** A holding's own order list as amounts of what the society orders, and what of it is not ordered. */
export async function suggested(context: ReadContext, holding: HoldingOnDay, items: readonly SeedItemRecord[]) {
  const { lines, sets } = await listOf(context, holding, comingSeason(context.today));
  const seeds = lines.map(({ cropKey, variety, toOrder }): Wanted => ({ cropKey, variety, seeds: toOrder }));
  const { amounts, unlisted } = matchList([...seeds, ...sets], items);
  const crops = await cropsOf(context.db, context.scope);
  const most = new Map(items.map(({ id, unit }) => [id, mostWanted[unit] * (unit === 'milligrams' ? 1000 : 1)]));
  return {
    amounts: Object.fromEntries([...amounts].map(([id, amount]) => [id, Math.min(amount, most.get(id) ?? amount)])),
    unlisted: unlisted.map((want) => ({ ...want, cropName: crops.get(want.cropKey)?.name ?? want.cropKey })),
  };
}
