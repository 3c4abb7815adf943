import 'server-only';
import { z } from 'zod';
import { bedsStanding, lockPlot } from '@/lib/data/bed';
import { holdingsOfMember } from '@/lib/data/holding';
import { lockTrial, type TrialRecord, trialById } from '@/lib/data/trial';
import { blocksOf, createBlock, groundsInTrials, type NewGround } from '@/lib/data/trial-block';
import { canEnter } from '@/lib/domain/policy/standing';
import { canKeepBlock } from '@/lib/domain/policy/trial';
import { overlap } from '@/lib/domain/ground/footprint';
import { type Piece, pieceOfBed } from '@/lib/domain/trial/piece-of-bed';
import { trialState } from '@/lib/domain/trial/trial-state';
import { joinTrialInput } from '@/lib/schemas/trials/trial';
import { type OpenBed, openBed } from '../ground/open-bed';
import { mutation, query, type ReadContext, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { stillIn } from './block-state';

/** A trial that can be joined, with the beds that the viewer may offer for it. */
export const readJoining = query({
  name: 'read-trial-joining',
  allow: canEnter,
  input: z.object({ trialId: z.uuid() }),
  read: async (context, { trialId }) => {
    const { db, scope, today } = context;
    const trial = await trialById(db, scope, trialId);
    if (!trial) throw new NotFound();
    const { lot: _, ...told } = trial;
    return {
      trial: told,
      isOpen: trialState(trial, today, false) === 'joining',
      plots: await plotsToOffer(context, trialId),
      units: scope.units,
    };
  },
});

/** The viewer's plots that are not in a trial yet, with their beds. */
export async function plotsToOffer({ db, scope, today }: ReadContext, trialId: string) {
  const holdings = await holdingsOfMember(db, scope, scope.memberId, today);
  const plots = holdings.flatMap((holding) => holding.plots);
  if (plots.length === 0) return [];
  const inIt = new Set(stillIn(await blocksOf(db, scope, [trialId])).map(({ plotId }) => plotId));
  const free = plots.filter(({ id }) => !inIt.has(id));
  const ids = free.map(({ id }) => id);
  const beds = await bedsStanding(db, scope, today, today, ids);
  return free
    .map(({ id, number }) => ({
      number,
      beds: beds
        .filter(({ plotId }) => plotId === id)
        .map(({ id: bedId, name, footprint }) => ({ id: bedId, name, footprint })),
    }))
    .filter((plot) => plot.beds.length);
}

/** Join a trial with two pieces of ground on one plot of one's own. Joining is agreeing that both results are reported. */
export const joinTrial = mutation({
  name: 'join-trial',
  allow: canEnter,
  input: joinTrialInput,
  write: async (context, { trialId, first, second }) => {
    const { tx, scope, today, now, note } = context;
    const trial = await lockTrial(tx, scope, trialId);
    if (!trial) throw new NotFound();
    const [one, other] = [await ownBed(context, first.bedId), await ownBed(context, second.bedId)];
    if (trialState(trial, today, false) !== 'joining') refuse('trial-joining-closed');
    if (one.plot.id !== other.plot.id) refuse('trial-other-plot', { field: 'second' });
    const grounds = [groundOf(one, first.piece, 'first'), groundOf(other, second.piece, 'second')] as const;
    if (overlap(grounds[0].footprint, grounds[1].footprint)) refuse('trial-ground-overlaps', { field: 'second' });
    await lockPlot(tx, scope, one.plot.id);
    await checkFree(context, trial, one.plot.id, grounds);
    const block = { trialId, plotId: one.plot.id, holdingId: one.holding.id, joinedAt: now };
    const blockId = await createBlock(tx, scope, block, [...grounds]);
    // Which block is whose stands in no book: the report shows what each gave.
    note({ verb: 'joined', thing: 'trial', thingId: trialId, forHoldingId: one.holding.id });
    return { trialId, blockId };
  },
});

type OwnBed = OpenBed & { readonly holding: NonNullable<OpenBed['holding']> };

async function ownBed({ tx, scope, today }: WriteContext, bedId: string): Promise<OwnBed> {
  const { holding, ...open } = await openBed({ db: tx, scope, today }, bedId);
  const isStanding = open.bed.retiredOn === null || open.bed.retiredOn > today;
  if (!holding || !canKeepBlock(scope, holding) || !isStanding) throw new NotFound();
  return { ...open, holding };
}

function groundOf({ bed }: OwnBed, piece: Piece, field: string): NewGround {
  if (piece !== 'whole' && bed.footprint.lengthCm < 2) refuse('trial-ground-too-small', { field });
  return { frameId: bed.frameId, bedId: bed.id, piece, footprint: pieceOfBed(bed.footprint, piece) };
}

async function checkFree(
  { tx, scope }: WriteContext,
  { id, season }: TrialRecord,
  plotId: string,
  grounds: readonly NewGround[],
): Promise<void> {
  if (stillIn(await blocksOf(tx, scope, [id])).some((block) => block.plotId === plotId)) refuse('trial-joined-already');
  for (const [at, { frameId, footprint }] of grounds.entries()) {
    const taken = await groundsInTrials(tx, scope, { season, frameId, exceptTrialId: id });
    if (taken.some((one) => overlap(one, footprint)))
      refuse('trial-ground-taken', { field: at === 0 ? 'first' : 'second' });
  }
}
