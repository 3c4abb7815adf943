import 'server-only';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { fromDbDay } from './day';
import type { Db } from './db';
import { byNumber } from './holding';
import type { Scope } from './scope';

/** Whose account it is: the holders of the day, or of the last day of a holding that has ended. */
export type AccountHolder = {
  readonly holdingId: string;
  readonly plots: readonly string[];
  readonly members: readonly { readonly id: string; readonly name: string }[];
  readonly memberIds: readonly string[];
  /** The first day on which it no longer holds ground, or null. */
  readonly endedOn: CalendarDate | null;
};

type During = { readonly fromOn: Date; readonly untilOn: Date | null };

function standsOn(day: CalendarDate) {
  return ({ fromOn, untilOn }: During) => fromDbDay(fromOn) <= day && (untilOn === null || fromDbDay(untilOn) > day);
}

/** Holdings as the ledger knows them, by plot; ended ones too, since an account stays until it is nothing. */
export async function accountHolders(
  db: Db,
  { societyId }: Scope,
  day: CalendarDate,
  only: { readonly holdingIds?: readonly string[]; readonly memberId?: string } = {},
): Promise<AccountHolder[]> {
  const { holdingIds, memberId } = only;
  const rows = await db.holding.findMany({
    where: {
      societyId,
      ...(holdingIds ? { id: { in: [...holdingIds] } } : {}),
      ...(memberId ? { members: { some: { memberId } } } : {}),
    },
    select: {
      id: true,
      endedOn: true,
      tenancies: { select: { fromOn: true, untilOn: true, plot: { select: { number: true } } } },
      members: { select: { fromOn: true, untilOn: true, member: { select: { id: true, name: true } } } },
    },
  });
  const holders = rows.map(({ id, endedOn: ended, tenancies, members: all }): AccountHolder => {
    const endedOn = ended && fromDbDay(ended) <= day ? fromDbDay(ended) : null;
    const at = standsOn(endedOn ? addDays(endedOn, -1) : day);
    const members = all.filter(at).map(({ member }) => member);
    const plots = tenancies.filter(at).map(({ plot }) => plot.number);
    const memberIds = members.map((member) => member.id);
    return { holdingId: id, endedOn, members, memberIds, plots: plots.sort(byNumber) };
  });
  return holders
    .filter((holder) => !memberId || holder.memberIds.includes(memberId))
    .sort((one, other) => byNumber(one.plots[0] ?? '', other.plots[0] ?? ''));
}
