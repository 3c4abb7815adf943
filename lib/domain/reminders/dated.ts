import type { CalendarDate } from '../calendar/calendar-date';

/** A dated thing of the coming year. The key names it for ever; from and to are whole days, both included; facts are for its words. */
export type Dated = {
  readonly key: string;
  readonly code: string;
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  readonly facts: Readonly<Record<string, string | number | null>>;
};
