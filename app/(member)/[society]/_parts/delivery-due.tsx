import { dayWords, loadsWords, whenWords } from '@/app/_ui/delivery-words';
import type { DueItem } from '@/app/_ui/due-list';
import { NeedReason } from '@/app/_ui/need-reason';
import { Reason } from '@/app/_ui/sheet';
import { daysBetween } from '@/lib/domain/calendar/calendar-date';
import type { Bookable, DeliveryDue } from '@/lib/usecases/week/due-deliveries';
import type { Week } from './week';

/** What a delivery wants, as a line of the week. */
export function deliveryItem(due: DeliveryDue, week: Week): DueItem {
  if (due.code === 'book') return bookItem(due, week);
  const at = `/${week.society}`;
  if (due.code === 'run')
    return {
      key: `run ${due.deliveryId}`,
      when: 'secretary',
      what: `“${due.name}”: ${due.step}`,
      action: { href: `${at}/office/deliveries/${due.deliveryId}`, label: 'Run it' },
    };
  const left = daysBetween(week.today, due.by);
  return {
    key: `collect ${due.deliveryId}`,
    when: left < 0 ? `${-left} days late` : `by ${dayWords(due.by).slice(0, -5)}`,
    late: left < 0,
    what: `Collect ${loadsWords(due.loads, due.loadUnit)} of “${due.name}”`,
    why: `${due.share} is your share.`,
    action: { href: `${at}/deliveries/${due.deliveryId}/collect`, label: 'At the heap' },
  };
}

function bookItem(due: Extract<DeliveryDue, { code: 'book' }>, { society, timeZone, units }: Week): DueItem {
  const open = due.loads.find(({ asked }) => asked === null);
  const first = open ?? due.loads[0];
  const said = due.loads.filter(({ asked }) => asked !== null);
  const wanted = due.loads.filter(({ asked }) => asked === null);
  const names = (loads: readonly Bookable[]) => loads.map(({ name }) => `“${name}”`).join(' and ');
  const asked = said.map((one) => `${loadsWords(one.asked ?? 0, one.need.loadUnit)} of “${one.name}”`).join(' and ');
  const needed = first?.need.loads ? `Book ${loadsWords(first.need.loads, first.need.loadUnit)}` : 'Book';
  return {
    key: `book ${first?.deliveryId} ${due.holdingId}`,
    when: whenWords(due.closesAt, timeZone).split(' at ')[0] ?? '',
    what: open
      ? `Say how much you want of ${names(wanted)}${asked ? `; you ask for ${asked}` : ''}`
      : `You ask for ${asked}`,
    why: (
      <>
        {due.loads.map(({ deliveryId, name, need }) => (
          <div key={deliveryId}>
            Your ground needs {loadsWords(need.loads, need.loadUnit)}
            {due.loads.length > 1 ? ` of “${name}”` : ''}.
            <Reason ask={`Why ${need.loads}?`}>
              <NeedReason need={need} units={units} />
            </Reason>
          </div>
        ))}
        Booking closes {whenWords(due.closesAt, timeZone)}.
      </>
    ),
    action: {
      href: `/${society}/deliveries/${first?.deliveryId}`,
      label: open ? (due.loads.length > 1 ? 'Book' : needed) : 'Change it',
    },
  };
}
