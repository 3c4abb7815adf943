import { addMonths, addDays, type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { limeWaits } from '../catalogue/lime-tables';
import type { SourceKey } from '../catalogue/sources';

/** One published wait, and the first day that keeps it. */
export type LimeWait = {
  readonly code: 'lime-least' | 'lime-most' | 'slurry' | 'test-first';
  readonly earliestOn: CalendarDate;
  readonly kept: boolean;
  readonly source: SourceKey;
};

export type LimeAndManure = {
  readonly order: 'lime-first' | 'manure-first' | 'same-day';
  readonly verdict: 'ok' | 'too-soon';
  readonly days: number;
  readonly daysWanted: number;
  /** For whichever comes second. */
  readonly earliestOn: CalendarDate;
  readonly source: SourceKey;
  readonly waits: readonly LimeWait[];
};

/**
 * Whether lime and manure keep their distance in time on the same ground: lime drives the nitrogen of manure off as
 * ammonia.
 *
 * Method: after lime, manure waits three months at the least; six are the other end of the published range. After
 * manure, lime waits the three months that a pH test does, since only a test says how much; a week is published for
 * slurry. Together they are never right.
 *
 * @param limedOn, manuredOn  the two days, on ground that both touched
 * @returns      the verdict by the waits above, each wait with its first day and whether it is kept
 * @source       Teagasc, It's Time for Lime (slurry and urea; for manure it is our extension); RHS, Lime and liming
 * @example      limed 1 November 2026, manured 1 February 2027 → ok; manured 31 January → too soon by a day
 */
export function limeAndManure({
  limedOn,
  manuredOn,
}: {
  readonly limedOn: CalendarDate;
  readonly manuredOn: CalendarDate;
}): LimeAndManure {
  const manureFirst = manuredOn < limedOn;
  const [first, second] = manureFirst ? [manuredOn, limedOn] : [limedOn, manuredOn];
  const wait = (code: LimeWait['code'], earliestOn: CalendarDate, source: SourceKey): LimeWait => ({
    code,
    earliestOn,
    kept: second >= earliestOn,
    source,
  });
  const { limeThenManure, manureThenLime, beforeTest } = limeWaits;
  const afterManure = wait('test-first', addMonths(first, beforeTest.months), beforeTest.source);
  const afterLime = wait('lime-least', addMonths(first, limeThenManure.leastMonths), limeThenManure.source);
  const deciding = manureFirst ? afterManure : afterLime;
  return {
    order: first === second ? 'same-day' : manureFirst ? 'manure-first' : 'lime-first',
    verdict: deciding.kept ? 'ok' : 'too-soon',
    days: daysBetween(first, second),
    daysWanted: daysBetween(first, deciding.earliestOn),
    earliestOn: deciding.earliestOn,
    source: deciding.source,
    waits: manureFirst
      ? [wait('slurry', addDays(first, manureThenLime.days), manureThenLime.source), afterManure]
      : [afterLime, wait('lime-most', addMonths(first, limeThenManure.mostMonths), limeThenManure.source)],
  };
}

/**
 * The first day on which a pH test means something, after the last lime, fertiliser or manure.
 *
 * @source   RHS, Lime and liming: not within three months
 * @example  dressed on 30 November 2026 → 28 February 2027
 */
export function testableFrom(dressedOn: CalendarDate): CalendarDate {
  return addMonths(dressedOn, limeWaits.beforeTest.months);
}
