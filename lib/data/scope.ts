import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { Role, Standing } from '@/lib/domain/policy/standing';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { fromDbDay } from './day';
import type { Db } from './db';

declare const brand: unique symbol;

/**
 * Leave to read and write one society's rows. Only `openScope` makes one, after looking the membership up;
 * every function of lib/data that touches a society's rows takes it, so that forgetting does not compile.
 */
export type Scope = Standing & {
  readonly [brand]: 'Scope';
  readonly societyId: string;
  readonly slug: string;
  readonly societyName: string;
  readonly timeZone: string;
  readonly memberName: string;
  readonly units: 'metric' | 'imperial';
};

type Claim = { readonly accountId: string; readonly sessionVersion: number; readonly slug: string };

/**
 * The scope of an account in a society, or null where there is no membership: to an outsider nothing exists.
 * A session of an older version than the account's is nobody's, and who has left is a member no more.
 */
export async function openScope(
  db: Db,
  { accountId, sessionVersion, slug }: Claim,
  today: (timeZone: string) => CalendarDate,
): Promise<Scope | null> {
  const member = await db.member.findFirst({
    where: { accountId, account: { sessionVersion }, society: { slug } },
    include: { roles: true, society: true },
  });
  return member && isHereOn(member.leftOn, today(member.society.timeZone)) ? scopeOf(member) : null;
}

/** A scope for seeds and tests, of a member that they have just written. */
export async function openScopeOfMember(db: Db, memberId: string): Promise<Scope> {
  return scopeOf(
    await db.member.findUniqueOrThrow({ where: { id: memberId }, include: { roles: true, society: true } }),
  );
}

/** Whether somebody is a member on a day: not left, or leaving later. */
export function isHereOn(leftOn: Date | null, day: CalendarDate): boolean {
  return leftOn === null || fromDbDay(leftOn) > day;
}

type LoadedMember = Prisma.MemberGetPayload<{ include: { roles: true; society: true } }>;

function scopeOf({ id, societyId, name, units, roles, society }: LoadedMember): Scope {
  const facts: Omit<Scope, typeof brand> = {
    societyId,
    slug: society.slug,
    societyName: society.name,
    timeZone: society.timeZone,
    memberId: id,
    memberName: name,
    units: units === 'imperial' ? 'imperial' : 'metric',
    roles: roles.map(({ role }): Role => role),
  };
  return facts as Scope;
}
