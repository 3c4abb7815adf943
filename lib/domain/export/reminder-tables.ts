import { type ExportTable, never, own } from './export-table';

const me = { column: 'memberId', is: 'me' } as const;
const ownRow = { societyId: never('the same in every row: the society itself') } as const;
const way = never('a way in: only its hash is kept, and that is nobody’s');

/** Reminders: calendars and the weekly letter. */
export const reminderTables: readonly ExportTable[] = [
  {
    table: 'CalendarFeed',
    file: 'calendar-feeds.csv',
    says: 'Private calendar addresses, without the address.',
    columns: {
      id: own('number of the row'),
      ...ownRow,
      memberId: own('whose it is'),
      tokenHash: way,
      createdAt: own('when it was made'),
      revokedAt: own('when it was taken back; empty while it works'),
    },
    owner: me,
  },
  { table: 'FeedEvent', leftOut: 'worked out from other tables, and kept so that a calendar is told of changes' },
  {
    table: 'DigestWish',
    file: 'weekly-letter.csv',
    says: 'Whether the weekly letter is wanted.',
    columns: {
      ...ownRow,
      memberId: own('whose it is'),
      wanted: own('true where it is wanted'),
      tokenHash: way,
      changedAt: own('when that was said'),
    },
    owner: me,
  },
  {
    table: 'DigestSent',
    file: 'weekly-letters-sent.csv',
    says: 'Weekly letters made.',
    columns: {
      ...ownRow,
      memberId: own('whose it is'),
      monday: own('the week by its Monday'),
      mailId: never('the mail itself is not kept'),
      at: own('when it was made'),
    },
    owner: me,
  },
];
