import { db } from '@/lib/data/db';
import type { Caller } from '@/lib/usecases/operation';

/** A member of the demo as whoever is signed in. */
export async function callerOf(slug: string, memberId: string): Promise<Caller> {
  const { account } = await db().member.findUniqueOrThrow({ where: { id: memberId }, include: { account: true } });
  return { accountId: account?.id ?? '', sessionVersion: account?.sessionVersion ?? 0, slug };
}
