import 'server-only';
import { Prisma } from '@/generated/prisma/client';
import type { Quorum } from '@/lib/domain/ballot/quorum';
import type { CarriedBy, Choice, Tally } from '@/lib/domain/ballot/tally';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { isSettingKey, type SettingKey } from '@/lib/domain/catalogue/settings';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

export type BallotState = 'draft' | 'open' | 'closed' | 'withdrawn';
export type HandsBy = 'member' | 'holding';
/** What became of the rule that a motion carried. */
export type Applied = 'set' | 'out-of-range' | 'window-inside-out';

/** The rule that a motion would change, from a day on. */
export type ProposedSetting = {
  readonly key: SettingKey;
  readonly value: string | number;
  readonly from: CalendarDate;
};

export type BallotChoiceRecord = Choice & { readonly words: string };

/** A hand that counted: whose it is, who raised it, and for what. */
export type CastHand = {
  readonly memberId: string;
  readonly holdingId: string | null;
  readonly choiceId: string;
  readonly raisedById: string;
};

/** What a count came to, as it was frozen. */
export type BallotResult = Tally & {
  readonly cast: readonly CastHand[];
  readonly method: { readonly name: string; readonly version: number };
};

export type BallotRecord = {
  readonly id: string;
  readonly state: BallotState;
  readonly number: number | null;
  readonly title: string;
  readonly body: string;
  readonly kind: 'motion' | 'choice';
  readonly handsBy: HandsBy;
  readonly quorum: Quorum;
  readonly carriedBy: CarriedBy;
  readonly closesAt: Date;
  readonly setting: ProposedSetting | null;
  readonly openedAt: Date | null;
  readonly entitled: number | null;
  readonly closedAt: Date | null;
  readonly result: BallotResult | null;
  readonly applied: Applied | null;
  readonly withdrawnAt: Date | null;
  readonly withdrawnWhy: string | null;
  readonly choices: readonly BallotChoiceRecord[];
};

const shape = { choices: { orderBy: { position: 'asc' } } } satisfies Prisma.BallotInclude;
type Row = Prisma.BallotGetPayload<{ include: typeof shape }>;

function toBallot(row: Row): BallotRecord {
  const { id, number, title, body, closesAt, openedAt, entitled, closedAt, withdrawnAt, withdrawnWhy } = row;
  return {
    ...{ id, number, title, body, closesAt, openedAt, entitled, closedAt, withdrawnAt, withdrawnWhy },
    state: row.state as BallotState,
    kind: row.kind as BallotRecord['kind'],
    handsBy: row.handsBy as HandsBy,
    quorum: { kind: row.quorumKind as Quorum['kind'], amount: row.quorum },
    carriedBy: row.carriedBy as CarriedBy,
    setting: settingOf(row),
    result: row.result as BallotResult | null,
    applied: row.applied as Applied | null,
    choices: row.choices.map((choice) => ({
      id: choice.id,
      stands: choice.stands as Choice['stands'],
      words: choice.words,
    })),
  };
}

function settingOf({ settingKey, settingValue, settingFrom }: Row): ProposedSetting | null {
  if (!settingKey || !isSettingKey(settingKey) || !settingFrom) return null;
  const value = typeof settingValue === 'number' ? settingValue : String(settingValue);
  return { key: settingKey, value, from: fromDbDay(settingFrom) };
}

/** Every question of the society, the newest first by when it closes. */
export async function ballotsOf(db: Db, { societyId }: Scope): Promise<BallotRecord[]> {
  const orderBy: Prisma.BallotOrderByWithRelationInput[] = [{ closesAt: 'desc' }, { id: 'desc' }];
  return (await db.ballot.findMany({ where: { societyId }, include: shape, orderBy })).map(toBallot);
}

/** The questions for which hands can be raised, the one that closes first before the others. */
export async function openBallots(db: Db, { societyId }: Scope, now: Date): Promise<BallotRecord[]> {
  const where = { societyId, state: 'open', closesAt: { gt: now } };
  const rows = await db.ballot.findMany({ where, include: shape, orderBy: [{ closesAt: 'asc' }, { id: 'asc' }] });
  return rows.map(toBallot);
}

/** Which questions have had their time and are not counted yet. */
export async function ballotsToClose(db: Db, { societyId }: Scope, now: Date): Promise<string[]> {
  const where = { societyId, state: 'open', closesAt: { lte: now } };
  const rows = await db.ballot.findMany({ where, select: { id: true }, orderBy: [{ closesAt: 'asc' }, { id: 'asc' }] });
  return rows.map(({ id }) => id);
}

/** One question, or null. */
export async function ballotById(db: Db, { societyId }: Scope, id: string): Promise<BallotRecord | null> {
  const row = await db.ballot.findFirst({ where: { id, societyId }, include: shape });
  return row && toBallot(row);
}

/**
 * One question, locked until the transaction ends: `shared` by hands that are raised at once, `alone` for whoever opens, closes or
 * withdraws it, who waits for them as they wait for that.
 */
export async function lockBallot(
  tx: Tx,
  scope: Scope,
  id: string,
  how: 'shared' | 'alone',
): Promise<BallotRecord | null> {
  const { societyId } = scope;
  if (how === 'shared')
    await tx.$queryRaw`SELECT 1 FROM "Ballot" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR SHARE`;
  else
    await tx.$queryRaw`SELECT 1 FROM "Ballot" WHERE "id" = ${id}::uuid AND "societyId" = ${societyId}::uuid FOR UPDATE`;
  return ballotById(tx, scope, id);
}

export type Question = Pick<
  BallotRecord,
  'title' | 'body' | 'kind' | 'handsBy' | 'quorum' | 'carriedBy' | 'closesAt' | 'setting'
> & { readonly choices: readonly Omit<BallotChoiceRecord, 'id'>[] };

function columnsOf({ quorum, setting, choices: _, ...facts }: Question) {
  const proposed = setting
    ? { settingKey: setting.key, settingValue: setting.value, settingFrom: toDbDay(setting.from) }
    : null;
  return { ...facts, quorumKind: quorum.kind, quorum: quorum.amount, proposed };
}

/** Write a question down, for nobody yet but the committee. */
export async function createBallot(tx: Tx, scope: Scope, question: Question, createdAt: Date): Promise<string> {
  const { proposed, ...columns } = columnsOf(question);
  const data = { ...columns, ...proposed, societyId: scope.societyId, putByMemberId: scope.memberId, createdAt };
  const { id } = await tx.ballot.create({ data, select: { id: true } });
  await writeChoices(tx, scope, id, question.choices);
  return id;
}

/** Change a question that is not put yet. */
export async function rewriteBallot(tx: Tx, scope: Scope, id: string, question: Question): Promise<void> {
  const { societyId } = scope;
  const { proposed, ...columns } = columnsOf(question);
  const none = { settingKey: null, settingValue: Prisma.DbNull, settingFrom: null };
  await tx.ballot.updateMany({ where: { id, societyId }, data: { ...columns, ...(proposed ?? none) } });
  await tx.ballotChoice.deleteMany({ where: { ballotId: id, societyId } });
  await writeChoices(tx, scope, id, question.choices);
}

async function writeChoices(tx: Tx, { societyId }: Scope, ballotId: string, choices: Question['choices']) {
  const data = choices.map(({ stands, words }, position) => ({ societyId, ballotId, position, stands, words }));
  await tx.ballotChoice.createMany({ data });
}
