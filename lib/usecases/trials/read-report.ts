import 'server-only';
import { z } from 'zod';
import type { BlockRecord } from '@/lib/data/trial-block';
import { canEnter } from '@/lib/domain/policy/standing';
import { type Pair, trialReport } from '@/lib/domain/trial/report';
import { query } from '../operation';
import { resultOf } from './block-state';
import { openTrial } from './open-trial';

/** What a trial says, once its report is open: to everybody at once, and before that to nobody. */
export const readTrialReport = query({
  name: 'read-trial-report',
  allow: canEnter,
  input: z.object({ trialId: z.uuid() }),
  read: async (context, { trialId }) => {
    const { scope, today } = context;
    const { trial, cropName, blocks, state, lot } = await openTrial(context, trialId);
    const rows = lot?.rows ?? [];
    const pairs = rows.flatMap(({ id, dropped }) => {
      const block = blocks.find((one) => one.id === id);
      return dropped || !block ? [] : [pairOf(block)];
    });
    return {
      trial: { ...trial, cropName },
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
