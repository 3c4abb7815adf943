import 'server-only';
import { type HoldingOnDay, holdingsOfMember } from '@/lib/data/holding';
import { lockTrial, type TrialRecord } from '@/lib/data/trial';
import { type BlockRecord, blockById, blocksOf, leaveWith, setTreatedOn } from '@/lib/data/trial-block';
import { canEnter } from '@/lib/domain/policy/standing';
import { canKeepBlock } from '@/lib/domain/policy/trial';
import type { TrialState } from '@/lib/domain/trial/trial-state';
import { leaveTrialInput, treatBlockInput } from '@/lib/schemas/trials/trial';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { stateWith } from './block-state';

type OwnBlock = {
  readonly trial: TrialRecord;
  readonly block: BlockRecord;
  readonly holding: HoldingOnDay;
  readonly state: TrialState;
};

/** A block of the viewer's own, its trial locked; refused where it has left or all is over. */
async function openOwnBlock(context: WriteContext, found: BlockRecord | null): Promise<OwnBlock> {
  const { tx, scope, today } = context;
  const own = await holdingsOfMember(tx, scope, scope.memberId, today);
  const holding = own.find(({ id }) => id === found?.holdingId);
  const trial = found && (await lockTrial(tx, scope, found.trialId));
  if (!trial || !holding || !canKeepBlock(scope, holding)) throw new NotFound();
  // Read once more under the lock: another holder may have changed it meanwhile.
  const blocks = await blocksOf(tx, scope, [trial.id]);
  const block = blocks.find(({ id }) => id === found.id);
  if (!block) throw new NotFound();
  const state = stateWith(trial, blocks, today);
  if (block.left) refuse('trial-left-already');
  if (state !== 'joining' && state !== 'drawing' && state !== 'running') refuse('trial-over');
  return { trial, block, holding, state };
}

/** The same, once the lot is drawn. */
export async function openLaidOut(context: WriteContext, found: BlockRecord | null): Promise<OwnBlock> {
  const open = await openOwnBlock(context, found);
  if (open.state !== 'running') refuse('trial-not-laid-out');
  return open;
}

/** Leave a trial: freely before the lot is drawn, and with a reason after it. */
export const leaveTrial = mutation({
  name: 'leave-trial',
  allow: canEnter,
  input: leaveTrialInput,
  write: async (context, { blockId, why }) => {
    const { tx, scope, now, note } = context;
    const { trial, holding, state } = await openOwnBlock(context, await blockById(tx, scope, blockId));
    if (state !== 'joining' && !why) refuse('trial-why-left', { field: 'why' });
    await leaveWith(tx, scope, blockId, { at: now, why: state === 'joining' ? null : why });
    const verb = state === 'joining' ? 'left' : 'dropped out of';
    note({ verb, thing: 'trial', thingId: trial.id, forHoldingId: holding.id });
    return { trialId: trial.id };
  },
});

/** Say that both treatments were done as the lot has it. */
export const treatBlock = mutation({
  name: 'treat-block',
  allow: canEnter,
  input: treatBlockInput,
  write: async (context, { blockId, treatedOn }) => {
    const { tx, scope, today, note } = context;
    const { trial, holding } = await openLaidOut(context, await blockById(tx, scope, blockId));
    if (treatedOn > today) refuse('trial-treated-future', { field: 'treatedOn' });
    await setTreatedOn(tx, scope, blockId, treatedOn);
    note({ verb: 'treated', thing: 'trial', thingId: trial.id, forHoldingId: holding.id });
    return { trialId: trial.id };
  },
});
