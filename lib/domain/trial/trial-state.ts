import type { CalendarDate } from '../calendar/calendar-date';

/** Where a trial stands. */
export type TrialState = 'joining' | 'drawing' | 'running' | 'reported' | 'too-few' | 'called-off';

/** What its state follows from. */
export type TrialFacts = {
  readonly joinByOn: CalendarDate;
  readonly resultsByOn: CalendarDate;
  readonly isLaidOut: boolean;
  readonly isCalledOff: boolean;
  /** Called off by nobody: too few had joined. */
  readonly isTooFew: boolean;
};

/**
 * Where a trial stands on a day. Its report opens on the day after the results' day, or once every block that is still in it has both
 * results: until then nobody sees another's, and from then on nothing is changed.
 *
 * @param isAllIn  whether every block has both results; said of a trial without blocks it is false
 */
export function trialState(facts: TrialFacts, today: CalendarDate, isAllIn: boolean): TrialState {
  if (facts.isCalledOff) return facts.isTooFew ? 'too-few' : 'called-off';
  if (!facts.isLaidOut) return today <= facts.joinByOn ? 'joining' : 'drawing';
  return isAllIn || today > facts.resultsByOn ? 'reported' : 'running';
}
