import 'server-only';
import ical, { ICalCalendarMethod, ICalEventStatus } from 'ical-generator';

/** A day, or several, as a calendar shows it. */
export type CalendarEntry = {
  readonly uid: string;
  /** The first day and the last, both included. */
  readonly from: string;
  readonly to: string;
  readonly title: string;
  readonly note: string;
  readonly url: string;
  readonly sequence: number;
  readonly changedAt: Date;
  readonly cancelled: boolean;
};

const dayMs = 86_400_000;

/** A calendar as RFC 5545 has it: whole days, each of which stands for itself whatever the time zone. */
export function calendarFile(name: string, entries: readonly CalendarEntry[]): string {
  const calendar = ical({
    name,
    prodId: { company: 'Barrowmoot', product: 'Barrowmoot', language: 'EN' },
    method: ICalCalendarMethod.PUBLISH,
    ttl: 3600,
  });
  for (const { uid, from, to, title, note, url, sequence, changedAt, cancelled } of entries)
    calendar.createEvent({
      id: uid,
      allDay: true,
      start: new Date(`${from}T00:00:00Z`),
      // The end of a whole day is the day after it.
      end: new Date(Date.parse(`${to}T00:00:00Z`) + dayMs),
      // Kept with the event, so that reading twice gives the same file.
      stamp: changedAt,
      lastModified: changedAt,
      timezone: 'UTC',
      summary: title,
      description: note,
      url,
      sequence,
      status: cancelled ? ICalEventStatus.CANCELLED : ICalEventStatus.CONFIRMED,
    });
  return calendar.toString();
}
