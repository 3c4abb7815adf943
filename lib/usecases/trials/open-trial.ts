import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { holdingsOfMember } from '@/lib/data/holding';
import { type TrialRecord, trialById } from '@/lib/data/trial';
import { type BlockRecord, blocksOf } from '@/lib/data/trial-block';
import { layout, trialSeed } from '@/lib/domain/trial/layout';
import type { ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { stateWith } from './block-state';
import { joinedAs, trialNow } from './draw-trial';

export type OpenTrial = Awaited<ReturnType<typeof openTrial>>;

/** A trial as it stands by now, with its blocks, which of its holdings are the viewer's, and how its lot fell. */
export async function openTrial(context: ReadContext, trialId: string) {
  const { db, scope, today } = context;
  const found = await trialById(db, scope, trialId);
  if (!found) throw new NotFound();
  const trial = await trialNow(context, found);
  const blocks = await blocksOf(db, scope, [trialId]);
  const own = new Set((await holdingsOfMember(db, scope, scope.memberId, today)).map(({ id }) => id));
  const cropName = (await cropsOf(db, scope)).get(trial.cropKey)?.name ?? trial.cropKey;
  return { trial, cropName, blocks, own, state: stateWith(trial, blocks, today), lot: lotOf(trial, blocks, own) };
}

/** How the lot fell, for anybody to check: ids of blocks say nothing of whose they are. */
function lotOf({ id: trialId, lot }: TrialRecord, blocks: readonly BlockRecord[], own: ReadonlySet<string>) {
  if (lot.bytesHex === null) return null;
  const drawn = blocks.filter(({ grounds }) => grounds.some(({ treatment }) => treatment !== null));
  const joined = drawn.map(joinedAs);
  const seed = trialSeed({ bytesHex: lot.bytesHex, trialId, blocks: joined });
  return {
    seed,
    rows: layout(seed, joined).map(({ id, number, rank, a }) => {
      const block = drawn.find((one) => one.id === id);
      return {
        ...{ id, number, rank },
        firstGets: a === block?.grounds[0]?.id ? ('A' as const) : ('B' as const),
        isMine: own.has(block?.holdingId ?? ''),
        dropped: block?.left ? { why: block.left.why ?? '' } : null,
      };
    }),
  };
}
