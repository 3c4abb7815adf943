import 'server-only';
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
  // Every page asks this, so it is one statement and not one a table.
  const [member] = await db.$queryRaw<Membership[]>`
    SELECT m."id", m."societyId", m."name", m."units", m."leftOn", s."slug", s."name" AS "societyName", s."timeZone",
      array(SELECT r."role"::text FROM "MemberRole" r WHERE r."memberId" = m."id" ORDER BY r."role") AS "roles"
    FROM "Member" m JOIN "Account" a ON a."id" = m."accountId" JOIN "Society" s ON s."id" = m."societyId"
    WHERE a."id" = ${accountId}::uuid AND a."sessionVersion" = ${sessionVersion} AND s."slug" = ${slug}`;
  return member && isHereOn(member.leftOn, today(member.timeZone)) ? scopeOf(member) : null;
}

/** A scope for what is done later in a member's name, and for seeds and tests. */
export async function openScopeOfMember(db: Db, memberId: string): Promise<Scope> {
  const include = { roles: true, society: true };
  const { society, roles, ...member } = await db.member.findUniqueOrThrow({ where: { id: memberId }, include });
  const { slug, name: societyName, timeZone } = society;
  return scopeOf({ ...member, slug, societyName, timeZone, roles: roles.map(({ role }) => role) });
}

/** Whether somebody is a member on a day: not left, or leaving later. */
export function isHereOn(leftOn: Date | null, day: CalendarDate): boolean {
  return leftOn === null || fromDbDay(leftOn) > day;
}

type Membership = {
  readonly id: string;
  readonly societyId: string;
  readonly name: string;
  readonly units: string;
  readonly leftOn: Date | null;
  readonly slug: string;
  readonly societyName: string;
  readonly timeZone: string;
  readonly roles: readonly Role[];
};

function scopeOf({ id, societyId, name, units, roles, slug, societyName, timeZone }: Membership): Scope {
  const facts: Omit<Scope, typeof brand> = {
    societyId,
    slug,
    societyName,
    timeZone,
    memberId: id,
    memberName: name,
    units: units === 'imperial' ? 'imperial' : 'metric',
    roles,
  };
  return facts as Scope;
}
