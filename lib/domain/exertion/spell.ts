import { positive, wholeFrom } from '../quantity/checked';
import type { Session } from './session';

/** A session as it is followed with a watch: so often, dig so long and then rest so long. */
export type Spell = { readonly times: number; readonly diggingMin: number; readonly restMin: number };

/**
 * A session in whole minutes, spell by spell.
 *
 * Method: digging is rounded down, and what the round of digging and resting leaves of its share of the session is rest.
 *
 * @param session  as `sessionOf` gives it
 * @returns        whole minutes; digging ≥ 1, rest ≥ 0; all spells together are no longer than the session
 * @throws RangeError on a session without digging or without spells
 * @source         arithmetic
 * @example        32.4 of 60 min in three spells → three times 10 min of digging and 10 of rest
 */
export function spellOf({ totalMin, diggingMin, spells }: Session): Spell {
  const times = wholeFrom(1, spells);
  const round = Math.max(1, Math.floor(positive(totalMin, 'a session') / times));
  // To the billionth first: a quarter of an hour must not be one minute short for the noise of a division.
  const whole = Math.floor(positive(diggingMin, 'digging') / times + 1e-9);
  const digging = Math.min(round, Math.max(1, whole));
  return { times, diggingMin: digging, restMin: round - digging };
}
