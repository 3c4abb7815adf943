import 'server-only';
import type { Prisma } from '@/generated/prisma/client';
import type { Role, Standing } from '@/lib/domain/policy/standing';
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
 * A session of an older version than the account's is nobody's.
 */
export async function openScope(db: Db, { accountId, sessionVersion, slug }: Claim): Promise<Scope | null> {
  const member = await db.member.findFirst({
    where: { accountId, account: { sessionVersion }, leftOn: null, society: { slug } },
    include: { roles: true, society: true },
  });
  return member && scopeOf(member);
}

/** A scope for seeds and tests, of a member that they have just written. */
export async function openScopeOfMember(db: Db, memberId: string): Promise<Scope> {
  return scopeOf(
    await db.member.findUniqueOrThrow({ where: { id: memberId }, include: { roles: true, society: true } }),
  );
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
