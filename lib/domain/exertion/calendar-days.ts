import { wholeFrom } from '../quantity/checked';

/** More than two sessions a day is no plan. */
export const mostSessionsPerWeek = 14;

function perWeek(sessionsPerWeek: number): number {
  if (wholeFrom(1, sessionsPerWeek) > mostSessionsPerWeek)
    throw new RangeError(`at most ${mostSessionsPerWeek} sessions a week: ${sessionsPerWeek}`);
  return sessionsPerWeek;
}

/**
 * Calendar days from the first session to the last, both counted, where sessions are spread evenly over the week.
 *
 * @param sessions         whole number ≥ 1
 * @param sessionsPerWeek  whole number, 1 to 14
 * @returns                whole days ≥ 1; it grows with the sessions and shrinks as they come oftener
 * @throws RangeError on anything else
 * @source                 arithmetic
 * @example                daysOfSessions(3, 3) → 5 (the first, third and fifth day)
 */
export function daysOfSessions(sessions: number, sessionsPerWeek: number): number {
  return Math.floor(((wholeFrom(1, sessions) - 1) * 7) / perWeek(sessionsPerWeek)) + 1;
}

/**
 * Sessions that fit into so many calendar days, today among them.
 *
 * @param days             whole number ≥ 0
 * @param sessionsPerWeek  whole number, 1 to 14
 * @returns                whole sessions ≥ 0: the most whose `daysOfSessions` is no longer
 * @throws RangeError on anything else
 * @source                 arithmetic
 * @example                sessionsInDays(5, 3) → 3
 */
export function sessionsInDays(days: number, sessionsPerWeek: number): number {
  return Math.ceil((wholeFrom(0, days) * perWeek(sessionsPerWeek)) / 7);
}
