import type { CalendarDate } from '../calendar/calendar-date';
import type { BioassayReading, BioassayRecord } from './record';

/** A reading as it was entered; a later one may stand in its place, on the same day or on another. */
export type EnteredReading = BioassayReading & { readonly replaces: CalendarDate | null };

/** A test as it is kept: every reading that was ever entered, in the order of entering. */
export type KeptBioassay = Omit<BioassayRecord, 'readings'> & { readonly entered: readonly EnteredReading[] };

/**
 * The record that stands: what was corrected gives way to its correction, and nothing that was entered is lost by it.
 *
 * Method: in the order of entering, a correction takes the place of the reading whose day it names; of two on one day the later stands.
 *
 * @param kept  as it is kept; not changed
 * @returns     one reading a day at the most, in the order of days
 * @source      records are superseded, never rewritten
 * @example     read on the 8th, corrected to the 9th → one reading, of the 9th
 */
export function recordThatStands({ entered, ...test }: KeptBioassay): BioassayRecord {
  const byDay = new Map<CalendarDate, BioassayReading>();
  for (const { on, pots, replaces } of entered) {
    if (replaces !== null) byDay.delete(replaces);
    byDay.set(on, { on, pots });
  }
  const readings = [...byDay.values()].sort((a, b) => (a.on < b.on ? -1 : Number(a.on > b.on)));
  const { sownOn, manureParts, mixParts, pots } = test;
  return { sownOn, manureParts, mixParts, pots, readings };
}
