import 'server-only';
import { Prisma } from '@/generated/prisma/client';
import { type OwnSowing, ownSowingOf } from '@/lib/domain/seed/own-sowing';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

const prefix = 'sowing.';

/** How the viewer sows, by crop, where they said so themselves. */
export async function ownSowings(db: Db, { societyId, memberId }: Scope): Promise<ReadonlyMap<string, OwnSowing>> {
  const rows = await db.memberSetting.findMany({
    where: { societyId, memberId, key: { startsWith: prefix } },
    orderBy: [{ setAt: 'asc' }, { id: 'asc' }],
    select: { key: true, value: true },
  });
  const newest = new Map(rows.map(({ key, value }) => [key.slice(prefix.length), ownSowingOf(value)]));
  return new Map([...newest].flatMap(([cropKey, own]) => (own ? [[cropKey, own] as const] : [])));
}

/** Say how one sows a crop, or with null put it back. */
export async function appendOwnSowing(
  tx: Tx,
  { societyId, memberId }: Scope,
  cropKey: string,
  own: OwnSowing | null,
  setAt: Date,
): Promise<void> {
  const value = own ? { ...own } : Prisma.JsonNull;
  await tx.memberSetting.create({ data: { societyId, memberId, key: `${prefix}${cropKey}`, value, setAt } });
}
