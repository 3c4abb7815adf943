import 'server-only';
import { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import { holdingsOfMember } from '@/lib/data/holding';
import { type TrialRecord, trialsOf } from '@/lib/data/trial';
import { type BlockRecord, blocksOf, type GroundRecord } from '@/lib/data/trial-block';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { canCallOffTrial } from '@/lib/domain/policy/trial';
import type { TrialState } from '@/lib/domain/trial/trial-state';
import { query, type ReadContext } from '../operation';
import { isWhole, resultOf, stateWith, stillIn } from './block-state';
import { trialNow } from './draw-trial';
import { harvestsOn } from './harvests-on';
import { plotsToOffer } from './join-trial';
import { type OpenTrial, openTrial } from './open-trial';

/** Every trial, the newest first: what it asks, and where it stands. */
export const readTrials = query({
  name: 'read-trials',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { db, scope, today } = context;
    const trials = await trialsNow(context);
    const blocks = await blocksOf(
      db,
      scope,
      trials.map(({ id }) => id),
    );
    const own = new Set((await holdingsOfMember(db, scope, scope.memberId, today)).map(({ id }) => id));
    const crops = await cropsOf(db, scope);
    return {
      trials: trials.map((trial) => {
        const { id, question, cropKey, season, joinByOn, resultsByOn, leastPlots } = trial;
        const its = blocks.filter(({ trialId }) => trialId === id);
        return {
          ...{ id, question, season, joinByOn, resultsByOn, leastPlots },
          cropName: crops.get(cropKey)?.name ?? cropKey,
          state: stateWith(trial, its, today),
          plots: stillIn(its).length,
          isMine: stillIn(its).some(({ holdingId }) => own.has(holdingId)),
        };
      }),
    };
  },
});

async function trialsNow(context: ReadContext): Promise<TrialRecord[]> {
  const now = [];
  for (const trial of await trialsOf(context.db, context.scope)) now.push(await trialNow(context, trial));
  return now;
}

/** One trial: what it asks, where it stands, how its lot fell, and the viewer's own blocks with what they gave. */
export const readTrial = query({
  name: 'read-trial',
  allow: canEnter,
  input: z.object({ trialId: z.uuid() }),
  read: async (context, { trialId }) => {
    const { scope, today } = context;
    const { trial, cropName, blocks, own, state, lot } = await openTrial(context, trialId);
    const mine = blocks.filter(({ holdingId, left }) => own.has(holdingId) && (!left || left.why !== null));
    return {
      trial: { ...trial, cropName },
      state,
      plots: stillIn(blocks).length,
      whole: stillIn(blocks).filter(isWhole).length,
      lot,
      mine: await Promise.all(
        mine.map((block) => shownOwn(context, { trial, state, block, number: numberOf(lot, block.id) })),
      ),
      canJoin: state === 'joining' && (await plotsToOffer(context, trialId)).length > 0,
      canCallOff: ['joining', 'running'].includes(state) && canCallOffTrial(scope, trial),
      units: scope.units,
      timeZone: scope.timeZone,
      today,
    };
  },
});

function numberOf(lot: OpenTrial['lot'], id: string): number | null {
  return lot?.rows.find((row) => row.id === id)?.number ?? null;
}

type Own = { trial: TrialRecord; state: TrialState; block: BlockRecord; number: number | null };

async function shownOwn(context: ReadContext, { trial, state, block, number }: Own) {
  const { id, plotNumber, left, treatedOn, grounds } = block;
  const shown = async (ground: GroundRecord) => ({
    ...{ id: ground.id, nth: ground.nth, bedId: ground.bedId, bedName: ground.bedName, piece: ground.piece },
    treatment: ground.treatment,
    footprint: ground.footprint,
    areaCm2: areaCm2(ground.footprint),
    result: resultOf(ground),
    earlier: ground.results.slice(1),
    onRecord: state === 'running' && !left ? await harvestsOn(context, trial, block, ground) : null,
  });
  return { id, number, plotNumber, left, treatedOn, grounds: await Promise.all(grounds.map(shown)) };
}
