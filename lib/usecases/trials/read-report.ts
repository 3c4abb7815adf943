import 'server-only';
import { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import { holdingsOfMember } from '@/lib/data/holding';
import { type BlockRecord, blocksOf } from '@/lib/data/trial-block';
import { canEnter } from '@/lib/domain/policy/standing';
import { type Pair, trialReport } from '@/lib/domain/trial/report';
import { query } from '../operation';
import { NotFound } from '../refusal';
import { resultOf, stateWith } from './block-state';
import { trialNow } from './draw-trial';
import { lotOf } from './read-trials';

/** What a trial says, once its report is open: to everybody at once, and before that to nobody. */
export const readTrialReport = query({
  name: 'read-trial-report',
  allow: canEnter,
  input: z.object({ trialId: z.uuid() }),
  read: async (context, { trialId }) => {
    const { db, scope, today } = context;
    const trial = await trialNow(context, trialId);
    if (!trial) throw new NotFound();
    const blocks = await blocksOf(db, scope, [trialId]);
    const own = new Set((await holdingsOfMember(db, scope, scope.memberId, today)).map(({ id }) => id));
    const crops = await cropsOf(db, scope);
    const state = stateWith(trial, blocks, today);
    const lot = lotOf(trial, blocks, own);
    const rows = lot?.rows ?? [];
    const pairs = rows.flatMap(({ id, dropped }) => {
      const block = blocks.find((one) => one.id === id);
      return dropped || !block ? [] : [pairOf(block)];
    });
    return {
      trial: { ...trial, cropName: crops.get(trial.cropKey)?.name ?? trial.cropKey },
      state,
      report: state === 'reported' ? trialReport(pairs) : null,
      blocks: rows.map(({ id, number, isMine, dropped }) => ({ id, number, isMine, dropped })),
      units: scope.units,
      today,
    };
  },
});

/** What a block gave on a square metre. */
function pairOf({ id, holdingId, grounds }: BlockRecord): Pair {
  const of = (treatment: 'A' | 'B') => {
    const ground = grounds.find((one) => one.treatment === treatment);
    const result = ground && resultOf(ground);
    return result ? (result.amount * 10_000) / result.areaCm2 : null;
  };
  return { id, holding: holdingId, a: of('A'), b: of('B') };
}
