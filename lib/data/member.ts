import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Role } from '@/lib/domain/policy/standing';
import { fromDbDay, toDbDay } from './day';
import type { Db, Tx } from './db';
import { removeLooseAccount } from './account';
import { heldOn } from './holding';
import { isHereOn, type Scope } from './scope';

export type ListedMember = {
  readonly id: string;
  readonly name: string;
  readonly email: string | null;
  readonly phone: string | null;
  readonly postal: string | null;
  readonly hasAccount: boolean;
  readonly roles: readonly Role[];
  readonly plots: readonly string[];
  readonly joinedOn: CalendarDate;
  readonly leftOn: CalendarDate | null;
  /** Still a member on the day asked about, though they may be leaving later. */
  readonly isHere: boolean;
  readonly isErased: boolean;
};

function shapeOn(day: CalendarDate) {
  return {
    roles: true,
    holdings: {
      where: heldOn(day),
      include: { holding: { include: { tenancies: { where: heldOn(day), include: { plot: true } } } } },
    },
  } satisfies Prisma.MemberInclude;
}

type Row = Prisma.MemberGetPayload<{ include: ReturnType<typeof shapeOn> }>;

function toListed(row: Row, day: CalendarDate): ListedMember {
  return {
    id: row.id,
    name: row.name,
    email: row.email,
    phone: row.phone,
    postal: row.postal,
    hasAccount: row.accountId !== null,
    roles: row.roles.map(({ role }) => role),
    plots: row.holdings.flatMap(({ holding }) => holding.tenancies.map(({ plot }) => plot.number)),
    joinedOn: fromDbDay(row.joinedOn),
    leftOn: row.leftOn && fromDbDay(row.leftOn),
    isHere: isHereOn(row.leftOn, day),
    isErased: row.erasedAt !== null,
  };
}

/** The members, by name, with the plots they hold on a day. */
export async function membersOn(db: Db, scope: Scope, day: CalendarDate): Promise<ListedMember[]> {
  const rows = await db.member.findMany({
    where: { societyId: scope.societyId },
    include: shapeOn(day),
    orderBy: { name: 'asc' },
  });
  return rows.map((row) => toListed(row, day));
}

/** One member, or null. */
export async function memberById(db: Db, scope: Scope, id: string, day: CalendarDate): Promise<ListedMember | null> {
  const row = await db.member.findFirst({ where: { id, societyId: scope.societyId }, include: shapeOn(day) });
  return row && toListed(row, day);
}

export type NewMember = { readonly name: string; readonly email: string | null; readonly phone: string | null };

/** Write members without accounts, and return their ids in order. */
export async function createMembers(
  tx: Tx,
  scope: Scope,
  members: readonly NewMember[],
  on: CalendarDate,
): Promise<string[]> {
  const rows = await tx.member.createManyAndReturn({
    data: members.map((member) => ({ ...member, societyId: scope.societyId, joinedOn: toDbDay(on) })),
    select: { id: true },
  });
  return rows.map(({ id }) => id);
}

type MemberChange = {
  name?: string;
  email?: string | null;
  phone?: string | null;
  postal?: string | null;
  units?: string;
};

/** Change a member's name, contact or units. */
export async function changeMember(tx: Tx, scope: Scope, id: string, change: MemberChange): Promise<void> {
  await tx.member.updateMany({ where: { id, societyId: scope.societyId }, data: change });
}

/** The day a member came, or took the newest ground they hold: they can't leave before it. */
export async function newestStart(db: Db, scope: Scope, id: string): Promise<CalendarDate | null> {
  const row = await db.member.findFirst({
    where: { id, societyId: scope.societyId },
    select: { joinedOn: true, holdings: { where: { untilOn: null }, select: { fromOn: true } } },
  });
  if (!row) return null;
  const starts = [row.joinedOn, ...row.holdings.map(({ fromOn }) => fromOn)].map(fromDbDay);
  return starts.toSorted().at(-1) ?? null;
}

/** A member leaves: from that day they no longer enter, nor hold ground. Offices end at once. */
export async function memberLeaves(tx: Tx, scope: Scope, id: string, on: CalendarDate): Promise<void> {
  await tx.member.updateMany({ where: { id, societyId: scope.societyId }, data: { leftOn: toDbDay(on) } });
  await tx.holdingMember.updateMany({
    where: { memberId: id, societyId: scope.societyId, untilOn: null },
    data: { untilOn: toDbDay(on) },
  });
  await tx.memberRole.deleteMany({ where: { memberId: id, societyId: scope.societyId } });
}

/**
 * Erase how a member is reached. Their name goes too, and their sign-in unless another society knows it; the ground's
 * history stays.
 */
export async function eraseMember(tx: Tx, scope: Scope, id: string, at: Date): Promise<void> {
  const { societyId } = scope;
  const before = await tx.member.findFirst({ where: { id, societyId }, select: { email: true, accountId: true } });
  // Mail that was sent to them carries their name and address too.
  if (before?.email) await tx.mailMessage.deleteMany({ where: { societyId, toAddress: before.email } });
  // What somebody weighs and how old they are goes with their name.
  await tx.memberSetting.deleteMany({ where: { societyId, memberId: id } });
  const erased = { name: 'a former member', email: null, phone: null, postal: null, accountId: null, erasedAt: at };
  await tx.member.updateMany({ where: { id, societyId }, data: erased });
  if (before?.accountId) await removeLooseAccount(tx, before.accountId);
}

/** Set which offices a member holds. The database refuses to lose the last secretary. */
export async function setRoles(tx: Tx, scope: Scope, memberId: string, roles: readonly Role[]): Promise<void> {
  const { societyId } = scope;
  await tx.memberRole.deleteMany({ where: { societyId, memberId, role: { notIn: [...roles] } } });
  await tx.memberRole.createMany({ data: roles.map((role) => ({ societyId, memberId, role })), skipDuplicates: true });
}

/** How many secretaries there are; their rows stay locked until the transaction ends. */
export async function lockSecretaries(tx: Tx, scope: Scope): Promise<string[]> {
  const rows = await tx.$queryRaw<{ memberId: string }[]>`
    SELECT "memberId" FROM "MemberRole" WHERE "societyId" = ${scope.societyId}::uuid AND "role" = 'secretary' FOR UPDATE`;
  return rows.map(({ memberId }) => memberId);
}

/** Whether the viewer’s name stays on what they wrote on the board when they have left. */
export async function nameStaysOf(db: Db, { societyId, memberId: id }: Scope): Promise<boolean> {
  const row = await db.member.findFirst({ where: { id, societyId }, select: { nameStays: true } });
  return row?.nameStays ?? true;
}

/** Choose that. */
export async function setNameStays(tx: Tx, { societyId, memberId: id }: Scope, nameStays: boolean): Promise<void> {
  await tx.member.updateMany({ where: { id, societyId }, data: { nameStays } });
}
