import 'server-only';
import type { Applied, BallotResult } from './ballot';
import type { Json, Tx } from './db';
import type { Scope } from './scope';

/** Open a question, with how many hands can be raised; and queue its closing, a second after its time. */
export async function markOpened(
  tx: Tx,
  { societyId, memberId }: Scope,
  id: string,
  { entitled, openedAt, closesAt }: { readonly entitled: number; readonly openedAt: Date; readonly closesAt: Date },
): Promise<void> {
  await tx.ballot.updateMany({ where: { id, societyId }, data: { state: 'open', entitled, openedAt } });
  const job = JSON.stringify({ ballotId: id, memberId });
  await tx.$executeRaw`SELECT graphile_worker.add_job('close-ballot', ${job}::json,
    run_at => ${closesAt}::timestamptz + interval '1 second', job_key => ${`close-ballot ${id}`})`;
}

/** Withdraw a question. Hands that were raised lie where they are, and nobody counts them. */
export async function markWithdrawn(
  tx: Tx,
  { societyId }: Scope,
  id: string,
  { at: withdrawnAt, why: withdrawnWhy }: { readonly at: Date; readonly why: string },
): Promise<void> {
  await tx.ballot.updateMany({ where: { id, societyId }, data: { state: 'withdrawn', withdrawnAt, withdrawnWhy } });
}

/** The next number in the society's minutes; whoever asks for one waits for the other. Ask before the question is locked. */
export async function nextDecisionNumber(tx: Tx, { societyId }: Scope): Promise<number> {
  await tx.$queryRaw`SELECT 1 FROM "Society" WHERE "id" = ${societyId}::uuid FOR NO KEY UPDATE`;
  const { _max } = await tx.ballot.aggregate({ where: { societyId }, _max: { number: true } });
  return (_max.number ?? 0) + 1;
}

/** Freeze what a count came to. The database refuses whatever would change it after. */
export async function markClosed(
  tx: Tx,
  { societyId }: Scope,
  id: string,
  closed: {
    readonly number: number;
    readonly closedAt: Date;
    readonly result: BallotResult;
    readonly applied: Applied | null;
  },
): Promise<void> {
  const data = { ...closed, result: closed.result as unknown as Json, state: 'closed' };
  await tx.ballot.updateMany({ where: { id, societyId, state: 'open' }, data });
}
