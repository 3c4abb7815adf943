import 'server-only';
import type { CastHand } from './ballot';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** A hand as it was raised, with when. */
export type HandRecord = CastHand & { readonly at: Date };

/** Every hand raised on one question, in the order in which they came. Only for counting, and for whoever's they are. */
export async function handsOf(db: Db, { societyId }: Scope, ballotId: string): Promise<HandRecord[]> {
  const rows = await db.hand.findMany({ where: { societyId, ballotId }, orderBy: { nth: 'asc' } });
  return rows.map(({ memberId, holdingId, choiceId, raisedByMemberId, at }) => ({
    ...{ memberId, holdingId, choiceId, at },
    raisedById: raisedByMemberId,
  }));
}

/** Who has raised a hand on each of some questions: members, or holdings. Never for what. */
export async function holdersRaised(
  db: Db,
  { societyId }: Scope,
  ballotIds: readonly string[],
): Promise<ReadonlyMap<string, ReadonlySet<string>>> {
  const rows = await db.hand.findMany({
    where: { societyId, ballotId: { in: [...ballotIds] } },
    select: { ballotId: true, memberId: true, holdingId: true },
  });
  const raised = new Map(ballotIds.map((id) => [id, new Set<string>()]));
  for (const { ballotId, memberId, holdingId } of rows) raised.get(ballotId)?.add(holdingId ?? memberId);
  return raised;
}

/** Raise a hand. The database refuses one that comes before the opening or after the close, or from nobody on the roll. */
export async function addHand(
  tx: Tx,
  { societyId, memberId: raisedByMemberId }: Scope,
  ballotId: string,
  hand: { readonly memberId: string; readonly holdingId: string | null; readonly choiceId: string; readonly at: Date },
): Promise<void> {
  await tx.hand.create({ data: { ...hand, societyId, ballotId, raisedByMemberId } });
}

/** The names of members, whether they are members still or not. */
export async function namesOf(
  db: Db,
  { societyId }: Scope,
  ids: readonly string[],
): Promise<ReadonlyMap<string, string>> {
  const rows = await db.member.findMany({
    where: { societyId, id: { in: [...new Set(ids)] } },
    select: { id: true, name: true },
  });
  return new Map(rows.map(({ id, name }) => [id, name]));
}
