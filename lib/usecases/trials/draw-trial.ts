import 'server-only';
import { writeOwnAudit } from '@/lib/data/audit';
import { db, inTransaction, type Tx } from '@/lib/data/db';
import { holdingsOn } from '@/lib/data/holding';
import { openScopeOfMember } from '@/lib/data/scope';
import {
  endJoining,
  endTrial,
  lockTrial,
  type TrialRecord,
  trialBytesOf,
  trialById,
  trialsToDraw,
} from '@/lib/data/trial';
import { type BlockRecord, blocksOf, setTreatment } from '@/lib/data/trial-block';
import { canonicalBlocks, type Joined, layout, trialSeed } from '@/lib/domain/trial/layout';
import { trialState } from '@/lib/domain/trial/trial-state';
import { dayIn, now } from '@/lib/platform/clock';
import type { ReadContext, WriteContext } from '../operation';
import { tell } from '../tell';

type At = Pick<ReadContext, 'scope' | 'now' | 'today'>;

/** Draw the lots of the trials whose joining has ended. Whoever comes first draws, however many try. */
export async function drawTrials(): Promise<void> {
  const instant = now();
  for (const { id, byMemberId } of await trialsToDraw(db(), instant)) {
    const scope = await openScopeOfMember(db(), byMemberId);
    await drawTrial({ scope, now: instant, today: dayIn(scope.timeZone, instant) }, id);
  }
}

/** A trial as it stands now: drawn first, where its time has come and nobody has looked since. */
export async function trialNow(context: ReadContext, trial: TrialRecord): Promise<TrialRecord> {
  if (trialState(trial, context.today, false) !== 'drawing') return trial;
  await drawTrial(context, trial.id);
  return (await trialById(db(), context.scope, trial.id)) ?? trial;
}

/** Lay a trial out by its lot, or end it where too few have joined; once, and under its lock. */
async function drawTrial(at: At, id: string): Promise<void> {
  await inTransaction(async (tx) => {
    const trial = await lockTrial(tx, at.scope, id);
    if (!trial || trialState(trial, at.today, false) !== 'drawing') return;
    const blocks = (await blocksOf(tx, at.scope, [id])).filter(({ left }) => left === null);
    if (blocks.length < trial.leastPlots) await giveUp({ tx, ...at }, trial, blocks);
    else await layOut({ tx, ...at }, trial, blocks);
  });
}

type InTx = At & { readonly tx: Tx };

async function layOut(context: InTx, trial: TrialRecord, blocks: readonly BlockRecord[]): Promise<void> {
  const { tx, scope, now: at } = context;
  const joined = blocks.map(joinedAs);
  const bytesHex = await trialBytesOf(tx, scope, trial.id);
  const seed = trialSeed({ bytesHex, trialId: trial.id, blocks: joined });
  for (const { a, b } of layout(seed, joined)) {
    await setTreatment(tx, scope, a, 'A');
    await setTreatment(tx, scope, b, 'B');
  }
  await endJoining(tx, scope, trial.id, { lotText: canonicalBlocks(trial.id, joined), at });
  const facts = { seed, blocks: blocks.length };
  await writeOwnAudit(tx, scope, at, { verb: 'laid out', thing: 'trial', thingId: trial.id, after: facts });
  const body = `The lot of the trial “${trial.question}” is drawn. Sign in to see which of your two pieces of ground gets which treatment.`;
  await tellJoined(context, blocks, 'your trial is laid out', body);
}

async function giveUp(context: InTx, trial: TrialRecord, blocks: readonly BlockRecord[]): Promise<void> {
  const { tx, scope, now: at } = context;
  await endTrial(tx, scope, trial.id, { at, by: null });
  const facts = { joined: blocks.length, least: trial.leastPlots };
  await writeOwnAudit(tx, scope, at, { verb: 'called off', thing: 'trial', thingId: trial.id, after: facts });
  const body = `The trial “${trial.question}” does not take place: ${blocks.length} of the ${trial.leastPlots} plots that it needs have joined. Your ground is yours to use as you like.`;
  await tellJoined(context, blocks, 'a trial does not take place', body);
}

/** A block as the lot sees it. */
export function joinedAs({ id, grounds: [one, other] }: BlockRecord): Joined {
  return { id, first: one?.id ?? '', second: other?.id ?? '' };
}

/** Tell the holders of blocks, where they can be mailed. */
export async function tellJoined(
  context: Pick<WriteContext, 'tx' | 'scope' | 'today'>,
  blocks: readonly BlockRecord[],
  subject: string,
  body: string,
): Promise<void> {
  const ids = new Set(blocks.map(({ holdingId }) => holdingId));
  const holdings = await holdingsOn(context.tx, context.scope, context.today);
  const memberIds = holdings.filter(({ id }) => ids.has(id)).flatMap((one) => one.memberIds);
  await tell(context, memberIds, subject, body);
}
