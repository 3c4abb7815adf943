import 'server-only';
import type { MonthDay } from '@/lib/domain/calendar/month-day';
import type { Db, Tx } from './db';
import type { Scope } from './scope';

/** What a household said last of its use of a kind. */
export type UseSaid = {
  readonly holdingId: string;
  readonly keepingKey: string;
  readonly tenthsPerWeek: number | null;
  readonly newCropFrom: MonthDay | null;
};

/** What some holdings said last of each kind; the newest row holds. */
export async function usesSaid(db: Db, scope: Scope, holdingIds: readonly string[]): Promise<UseSaid[]> {
  return db.householdUse.findMany({
    where: { societyId: scope.societyId, holdingId: { in: [...holdingIds] } },
    distinct: ['holdingId', 'keepingKey'],
    orderBy: [{ holdingId: 'asc' }, { keepingKey: 'asc' }, { setAt: 'desc' }, { id: 'desc' }],
    select: { holdingId: true, keepingKey: true, tenthsPerWeek: true, newCropFrom: true },
  });
}

/** Write what a household says now, and return the row's id. */
export async function createUseSaid(tx: Tx, scope: Scope, said: UseSaid, at: Date): Promise<string> {
  const { societyId, memberId: byMemberId } = scope;
  const data = { ...said, setAt: at, societyId, byMemberId };
  return (await tx.householdUse.create({ data, select: { id: true } })).id;
}
