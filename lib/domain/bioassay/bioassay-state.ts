import { addDays, type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { bioassayRules } from '../catalogue/bioassay-protocols';
import { judgeBioassay } from './judge-bioassay';
import { type BioassayRecord, readThroughDay } from './record';

export type BioassayState = {
  /** Pots or seeds are still to be set out; sow; read on a day; or nothing more: judged, or to be done again. */
  readonly next: 'set-out' | 'sow' | 'read' | 'judged' | 'start-again';
  /** For a reading: its day, and whether that is today or past. */
  readonly dueOn: CalendarDate | null;
  readonly due: boolean;
  readonly lateDays: number;
  /** All the days for reading; none before it is sown. */
  readonly readingDays: readonly { readonly on: CalendarDate; readonly read: boolean }[];
};

/**
 * What a bioassay wants next, and when.
 *
 * Method: it is read a week after sowing and weekly to day 28; a day is done once every pot has been read on it or
 * later, and the test may end before the last.
 *
 * @param record       of any stage
 * @param today        the day it is asked
 * @returns            dueOn only for a reading; lateDays ≥ 0
 * @throws RangeError  on a record that contradicts itself
 * @source             three sets of true leaves, or day 21 to 28: North Carolina State and Oregon State Universities,
 *                     as relayed; weekly: common practice
 * @example            sown 1 May, read on the 8th, today the 16th → read, due on the 15th, a day late
 */
export function bioassayState(record: BioassayRecord, today: CalendarDate): BioassayState {
  const { verdict, reasons } = judgeBioassay(record);
  const { sownOn } = record;
  const readTo = readThroughDay(record);
  const readingDays = sownOn
    ? bioassayRules.readingDays.map((day) => ({ on: addDays(sownOn, day), read: readTo !== null && readTo >= day }))
    : [];
  const nothingDue = { dueOn: null, due: false, lateDays: 0, readingDays };
  if (verdict === 'not-valid') {
    const short = reasons.some(({ code }) => code === 'too-few-pots' || code === 'too-few-seeds');
    return { next: short && sownOn === null ? 'set-out' : 'start-again', ...nothingDue };
  }
  if (verdict !== 'not-finished') return { next: 'judged', ...nothingDue };
  if (sownOn === null) return { next: 'sow', ...nothingDue };
  const dueOn = (readingDays.find(({ read }) => !read) ?? readingDays.at(-1))?.on ?? today;
  return { next: 'read', dueOn, due: today >= dueOn, lateDays: Math.max(0, daysBetween(dueOn, today)), readingDays };
}
