import 'server-only';
import { z } from 'zod';
import { bookPageRows, readBookPage } from '@/lib/data/book';
import { membersOn } from '@/lib/data/member';
import { isCalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canReadCommitteePapers } from '@/lib/domain/policy/standing';
import { query } from '../operation';

const aDay = z
  .string()
  .optional()
  .transform((text) => (text && isCalendarDate(text) ? text : null));

/** The book of changes: who, for whom, when, before, after. A filter that makes no sense is passed over. */
export const readBook = query({
  name: 'read-book',
  allow: canReadCommitteePapers,
  input: z.object({
    thing: z
      .string()
      .max(60)
      .optional()
      .transform((text) => text || null),
    member: z
      .uuid()
      .nullish()
      .catch(null)
      .transform((id) => id ?? null),
    from: aDay,
    to: aDay,
    page: z.coerce.number().int().min(0).max(100_000).catch(0),
  }),
  read: async ({ db, scope, today }, { member, ...filter }) => {
    const page = await readBookPage(db, scope, { ...filter, memberId: member });
    const members = (await membersOn(db, scope, today)).map(({ id, name }) => ({ id, name }));
    return { ...page, members, page: filter.page, pages: Math.ceil(page.count / bookPageRows) };
  },
});
