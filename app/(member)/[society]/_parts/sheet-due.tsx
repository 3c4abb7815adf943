import { dayWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import { trenchesWords } from '@/app/_ui/sheet-words';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import type { SheetDue } from '@/lib/usecases/sheets/due-sheets';

/** A ground sheet with trenches left, as a line of the week. */
export function sheetItem({ sheet, bedName, plotNumber, daysLeft }: SheetDue, society: string): DueItem {
  const { id, done, total, method, group, season, until } = sheet;
  const late = daysLeft < 0;
  const last = dayWords(until);
  return {
    key: `dig ${id}`,
    when: late
      ? `${-daysLeft} ${daysLeft === -1 ? 'day' : 'days'} late`
      : `${daysLeft + 1} ${daysLeft === 0 ? 'day' : 'days'} left`,
    late,
    what: `${diggingMethodOf(method).name}: ${trenchesWords({ method }, total - done)} left of ${total} on bed ${bedName}`,
    why: `Plot ${plotNumber}, for ${cropGroupName(group).toLowerCase()} in ${season}. The last day for it ${late ? 'was' : 'is'} ${last}.`,
    action: { href: `/${society}/ground/sheets/${id}`, label: done ? 'Go on digging' : 'Begin' },
  };
}
