import type { CalendarDate } from '../calendar/calendar-date';
import { type DatedPlanting, isSownInPlace, waysOf } from './dated-planting';
import { type Frosts, takesGround } from './windows-of';

/** When a planting takes its ground, and when it leaves it. */
export type GroundSpan = {
  /** The first and the last day on which it goes into its ground; one day, once that is on record. */
  readonly from: CalendarDate;
  readonly to: CalendarDate;
  /** The first and the last day on which the ground is cleared of it; null: it stands till somebody clears it. */
  readonly clearFrom: CalendarDate | null;
  readonly clearBy: CalendarDate | null;
  /** Whether the day of clearing is on record. */
  readonly isCleared: boolean;
};

/**
 * The days on which a planting takes its ground and leaves it: as recorded, and by its crop's windows where nothing is.
 *
 * Method: seed under cover or in a seedbed takes no ground of the bed. Of several ways that are still open the earliest and the latest day
 * count.
 *
 * @param today  as in `waysOf`
 * @returns      from ≤ to and clearFrom ≤ clearBy; null where neither the catalogue nor the record tells when it stands
 * @throws RangeError as `windowsOf`
 * @source       the catalogue's windows
 * @example      kale recorded for 2026 → takes its ground from 1 June to 31 July, leaves it from 1 November 2026 to 30 April 2027
 */
export function groundSpan(planting: DatedPlanting, frosts: Frosts, today: CalendarDate): GroundSpan | null {
  const windows = waysOf(planting, frosts, today).flatMap((way) => way.windows);
  const into = windows.filter(({ step }) => takesGround(step));
  const out = windows.filter(({ step }) => step === 'clear');
  const begun = planting.plantedOn ?? (isSownInPlace(planting, frosts) ? planting.sownOn : null);
  const from = begun ?? first(into.map((window) => window.from));
  const to = begun ?? last(into.map((window) => window.to));
  if (!from || !to) return null;
  const { clearedOn } = planting;
  const clearFrom = clearedOn ?? later(first(out.map((window) => window.from)), from);
  const clearBy = clearedOn ?? later(last(out.map((window) => window.to)), clearFrom);
  return { from, to, clearFrom, clearBy, isCleared: clearedOn !== null };
}

// What was begun late is not cleared before it was begun.
function later(day: CalendarDate | null, least: CalendarDate | null): CalendarDate | null {
  return day && least && day < least ? least : day;
}

function first(days: readonly CalendarDate[]): CalendarDate | null {
  return days.toSorted()[0] ?? null;
}

function last(days: readonly CalendarDate[]): CalendarDate | null {
  return days.toSorted().at(-1) ?? null;
}
