import { todayIn } from '@/lib/platform/clock';
import { logHarvest } from '@/lib/usecases/harvest/keep-harvests';
import { db } from '@/lib/data/db';
import { done, once } from '../../fixtures/society';
import type { Ground } from './ground';
import type { Members, Word } from './members';

/** What the holder and the neighbour lifted, each with notes; of the holder a weight that nothing else has. */
export async function makeHarvests(
  word: Word,
  { holder, neighbour }: Members,
  { ids }: Ground,
): Promise<{ harvestId: string }> {
  const lifted = { measure: 'grams', onDay: todayIn('Europe/London'), quality: 'middling' };
  const { plantingId, otherBedId } = ids;
  const other = await db().planting.findFirstOrThrow({ where: { bedId: otherBedId } });
  const theirs = { plantingId: other.id, ...lifted, amount: '3 kg', notes: word('neighbour harvest notes') };
  await done(logHarvest.run(neighbour.caller, once(theirs)));
  const ours = { plantingId, ...lifted, amount: `${holderLiftedG} g`, notes: word('holder harvest notes') };
  return { harvestId: (await done(logHarvest.run(holder.caller, once(ours)))).harvestId };
}

/** What the holder lifted, and nothing else weighs [g]. */
export const holderLiftedG = 7_654_321;
