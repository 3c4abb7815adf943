import type { CalendarDate } from '../calendar/calendar-date';

/** Something with a day, as a calendar shows it: whole days, from the first to the last of them. */
export type Dated = {
  /** Names the thing for ever: what it is, and its id. */
  readonly key: string;
  readonly code: string;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** Codes, numbers and names, for its words. */
  readonly facts: Readonly<Record<string, string | number | null>>;
};
