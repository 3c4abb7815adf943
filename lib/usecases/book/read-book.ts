import 'server-only';
import { z } from 'zod';
import { bookPageRows, readBookPage } from '@/lib/data/book';
import { membersOn } from '@/lib/data/member';
import { addDays, type CalendarDate, isCalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import { instantIn } from '@/lib/platform/clock';
import { query } from '../operation';

const aWord = z
  .string()
  .max(60)
  .optional()
  .transform((text) => text || null);
const aDay = z
  .string()
  .optional()
  .transform((text) => (text && isCalendarDate(text) ? text : null));

/** The book of changes: who, for whom, when, before, after. A filter that makes no sense is passed over. */
export const readBook = query({
  name: 'read-book',
  allow: canReadCommitteePapers,
  input: z.object({
    thing: aWord,
    verb: aWord,
    member: z
      .uuid()
      .nullish()
      .catch(null)
      .transform((id) => id ?? null),
    from: aDay,
    to: aDay,
    page: z.coerce.number().int().min(0).max(100_000).catch(0),
  }),
  read: async ({ db, scope, today }, { member, from, to, ...filter }) => {
    // Days are the society's own.
    const midnight = (day: CalendarDate) => instantIn(scope.timeZone, `${day}T00:00`);
    const page = await readBookPage(db, scope, {
      ...filter,
      memberId: member,
      from: from && midnight(from),
      before: to && midnight(addDays(to, 1)),
    });
    const members = (await membersOn(db, scope, today)).map(({ id, name }) => ({ id, name }));
    return {
      ...page,
      members,
      timeZone: scope.timeZone,
      page: filter.page,
      pages: Math.ceil(page.count / bookPageRows),
    };
  },
});
