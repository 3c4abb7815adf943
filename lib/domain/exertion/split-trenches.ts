import { positive } from '../quantity/checked';

/** What of one trench is dug in one session. */
export type TrenchPart = {
  /** From 1, in order of work. */
  readonly trench: number;
  readonly minutes: number;
  /** Whether the trench is finished with it. */
  readonly finishes: boolean;
};

/** What a session may run over to finish a trench [min]. */
const slackMin = 1;
/** Beyond this nobody reads on. */
const mostSessions = 100_000;

/**
 * Trenches parted over sessions, whole ones wherever they fit, since ground is best left at the end of a trench.
 *
 * Method: in order of work; a trench that no longer fits waits for the next session, unless it is longer than that whole
 * session: then it is begun with it and carried on in the next.
 *
 * @param trenchMinutes  digging in each trench; at least one, each > 0 [min]
 * @param minutesOf      digging in a session, by its place from 0; > 0 [min]
 * @returns      a list a session, none empty; the parts of a trench sum to its minutes; no session runs over by more than a minute
 * @throws RangeError on no trench, on minutes that are none, or where it would take more than 100,000 sessions
 * @source       common practice
 * @example      splitTrenches([20, 20, 20], () => 45) → trenches 1 and 2, then 3
 */
export function splitTrenches(
  trenchMinutes: readonly number[],
  minutesOf: (session: number) => number,
): readonly (readonly TrenchPart[])[] {
  if (trenchMinutes.length === 0) throw new RangeError('there is no trench to dig');
  const sessions: TrenchPart[][] = [];
  let today: TrenchPart[] = [];
  let left = 0;
  const begin = () => {
    if (sessions.length === mostSessions) throw new RangeError('sessions are too short for these trenches');
    left = positive(minutesOf(sessions.length), 'digging in a session');
    today = [];
    sessions.push(today);
  };
  begin();
  for (const [at, minutes] of trenchMinutes.entries()) {
    let rest = positive(minutes, 'digging in a trench');
    if (today.length > 0 && rest > left + slackMin) begin();
    for (; rest > left + slackMin; begin()) {
      today.push({ trench: at + 1, minutes: left, finishes: false });
      rest -= left;
    }
    today.push({ trench: at + 1, minutes: rest, finishes: true });
    left -= rest;
  }
  return sessions;
}
