import type { Season } from '../calendar/season-of';
import type { Footprint } from '../ground/footprint';
import { dueGround, type Manuring, type PlannedGround, type Turn, turnOf } from './turn';

/**
 * A bed's turns for the coming seasons, if each year's due ground is manured in its year.
 *
 * Method: season by season `turnOf`; what it finds due counts as manured for that season from the next one on. Ground
 * without any record stays so, and its share is assumed anew each year. What a crop that takes none keeps from its turn
 * stays due.
 *
 * @param ground         the bed [cm]
 * @param manurings      of its frame
 * @param plannedIn      crops planned for a season, on parts of the bed
 * @param firstSeason    the first of them
 * @param seasons        how many; whole number ≥ 0
 * @param intervalYears  whole years ≥ 1
 * @returns              one turn a season, each summing exactly to the bed's area
 * @throws RangeError    on an interval below one year
 * @source               as `turnOf`
 * @example              manured for 2024, interval 3, from 2027 on → due, not yet, not yet, due
 */
export function turnsAhead(given: {
  readonly ground: Footprint;
  readonly manurings: readonly Manuring[];
  readonly plannedIn: (season: Season) => readonly PlannedGround[];
  readonly firstSeason: Season;
  readonly seasons: number;
  readonly intervalYears: number;
}): Turn[] {
  const { ground, plannedIn, firstSeason, seasons, intervalYears } = given;
  const manurings = [...given.manurings];
  return Array.from({ length: seasons }, (_, at) => {
    const season = firstSeason + at;
    const of = { ground, season, intervalYears, manurings, planned: plannedIn(season) };
    const turn = turnOf(of);
    if (turn.dueCm2 > 0) manurings.push(...dueGround(of).map((footprint) => ({ footprint, season })));
    return turn;
  });
}
