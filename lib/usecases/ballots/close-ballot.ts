import 'server-only';
import { type BallotRecord, type BallotResult, ballotsToClose, lockBallot } from '@/lib/data/ballot';
import { markClosed, nextDecisionNumber } from '@/lib/data/ballot-step';
import { writeAuditOfTime } from '@/lib/data/audit';
import { db, inTransaction, type Tx } from '@/lib/data/db';
import { handsOf } from '@/lib/data/hand';
import { openScopeOfMember, type Scope } from '@/lib/data/scope';
import { tally } from '@/lib/domain/ballot/tally';
import { dayIn, now as clock } from '@/lib/platform/clock';
import type { ReadContext } from '../operation';
import { adoptSetting } from './adopt-setting';

const method = { name: 'hands', version: 1 };

/** Close what has had its time, before anything is read that rests on it: nobody waits for the queue to be worked. */
export async function closeDue({ db: read, scope, now }: Pick<ReadContext, 'db' | 'scope' | 'now'>): Promise<void> {
  for (const id of await ballotsToClose(read, scope, now)) await closeOnce(scope, id, now);
}

/** Close one question when its time has come. Too early by this process's clock, the queue asks again. */
export async function closeBallot({ ballotId, memberId }: { ballotId: string; memberId: string }): Promise<void> {
  const scope = await openScopeOfMember(db(), memberId);
  if (!(await closeOnce(scope, ballotId, clock()))) throw new Error(`count ${ballotId} is not over by this clock yet`);
}

/** Whoever comes first freezes the result, however many close at once; the others find it closed. False where it is too early. */
async function closeOnce(scope: Scope, ballotId: string, at: Date): Promise<boolean> {
  return inTransaction(async (tx) => {
    const number = await nextDecisionNumber(tx, scope);
    const ballot = await lockBallot(tx, scope, ballotId, 'alone');
    if (ballot?.state !== 'open') return true;
    if (ballot.closesAt > at) return false;
    await freeze(tx, scope, ballot, { number, at });
    return true;
  });
}

async function freeze(tx: Tx, scope: Scope, ballot: BallotRecord, { number, at }: { number: number; at: Date }) {
  const result = await count(tx, scope, ballot);
  const { outcome, hands, needed } = result;
  const carries = outcome === 'carried' ? ballot.setting : null;
  const context = { tx, scope, today: dayIn(scope.timeZone, at) };
  const adopted = carries ? await adoptSetting(context, { ballotId: ballot.id, at, setting: carries }) : null;
  await markClosed(tx, scope, ballot.id, { number, closedAt: at, result, applied: adopted?.applied ?? null });
  const after = { number, outcome, hands, needed, applied: adopted?.applied ?? null };
  await writeAuditOfTime(tx, scope, at, [
    { verb: 'closed', thing: 'count of hands', thingId: ballot.id, after },
    ...(adopted?.changes ?? []),
  ]);
}

async function count(tx: Tx, scope: Scope, { id, choices, entitled, quorum, carriedBy }: BallotRecord) {
  const hands = await handsOf(tx, scope, id);
  const holderOf = ({ memberId, holdingId }: (typeof hands)[number]) => holdingId ?? memberId;
  const raised = hands.map((hand) => ({ holder: holderOf(hand), choiceId: hand.choiceId }));
  const counted = tally(choices, raised, { entitled: entitled ?? 0, quorum, carriedBy });
  const last = [...new Map(hands.map((hand) => [holderOf(hand), hand])).values()];
  const cast = last.map(({ memberId, holdingId, choiceId, raisedById }) => ({
    ...{ memberId, holdingId, choiceId, raisedById },
  }));
  return { ...counted, cast, method } satisfies BallotResult;
}
