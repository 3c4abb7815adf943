import type { Season } from '../calendar/season-of';
import { cellsOf, liesIn } from '../ground/cells';
import { areaCm2, type Footprint } from '../ground/footprint';

/** Ground that was manured for a season. */
export type Manuring = { readonly footprint: Footprint; readonly season: Season };

/** A crop planned on some of the ground for the season in question. */
export type PlannedGround = { readonly footprint: Footprint; readonly takesManure: boolean };

export type Turn = {
  readonly dueCm2: number;
  /** Ground with no record of manuring: a share of it counts as due each year, marked "assumed". */
  readonly unloggedCm2: number;
  readonly notDueCm2: number;
  readonly intervalYears: number;
  /** Why, by area: manured for which season, planned for a crop that takes none, or never logged. */
  readonly reasons: readonly TurnReason[];
};

export type TurnReason =
  | { readonly code: 'due'; readonly manuredFor: Season; readonly areaCm2: number }
  | { readonly code: 'not-yet'; readonly manuredFor: Season; readonly dueFor: Season; readonly areaCm2: number }
  | { readonly code: 'crop-takes-none'; readonly areaCm2: number }
  | { readonly code: 'unlogged'; readonly areaCm2: number };

/** A bed, and what its turn for a season is judged by. */
export type TurnGiven = {
  readonly ground: Footprint;
  readonly manurings: readonly Manuring[];
  readonly planned: readonly PlannedGround[];
  readonly season: Season;
  readonly intervalYears: number;
};

/**
 * Which of a bed's ground is due its turn for manure in a season.
 *
 * Method: ground is due for season Y when it was last manured for a season ≤ Y − interval and the crop planned on it
 * takes manure, or none is planned; what was skipped stays due. Judged by area, along the edges of what was done.
 *
 * @param ground         the bed [cm]
 * @param manurings      of its frame, in any order; later seasons than the one asked for count as manured
 * @param planned        crops planned for the season, on parts of the bed
 * @param intervalYears  whole years ≥ 1
 * @returns              three areas [cm²] summing exactly to the bed's
 * @throws RangeError    on an interval below one year
 * @source               every three or four years: common practice
 * @example              manured for 2024, interval 3, season 2027, nothing planned → all of it due
 */
export function turnOf(given: TurnGiven): Turn {
  const { intervalYears } = given;
  const reasons = piecesOf(given).map(({ reason }) => reason);
  const sum = (...codes: readonly TurnReason['code'][]) =>
    reasons.reduce((area, one) => area + (codes.includes(one.code) ? one.areaCm2 : 0), 0);
  return {
    dueCm2: sum('due'),
    unloggedCm2: sum('unlogged'),
    notDueCm2: sum('not-yet', 'crop-takes-none'),
    intervalYears,
    reasons: gathered(reasons),
  };
}

/**
 * The pieces of a bed that are due their turn for a season: where `turnOf` counts its due area.
 *
 * @returns  footprints that do not overlap and whose areas sum to its dueCm2
 * @throws RangeError as `turnOf`
 */
export function dueGround(given: TurnGiven): Footprint[] {
  return piecesOf(given).flatMap(({ cell, reason }) => (reason.code === 'due' ? [cell] : []));
}

function piecesOf({ ground, manurings, planned, season, intervalYears }: TurnGiven) {
  if (!Number.isSafeInteger(intervalYears) || intervalYears < 1)
    throw new RangeError(`a manuring interval is whole years from 1: ${intervalYears}`);
  const refusing = planned.filter(({ takesManure }) => !takesManure);
  const grid = cellsOf(
    ground,
    [...manurings, ...refusing].map(({ footprint }) => footprint),
  );
  const reasonOf = (cell: Footprint): TurnReason => {
    if (refusing.some(({ footprint }) => liesIn(cell, footprint)))
      return { code: 'crop-takes-none', areaCm2: areaCm2(cell) };
    const seasons = manurings.filter(({ footprint }) => liesIn(cell, footprint)).map((one) => one.season);
    if (seasons.length === 0) return { code: 'unlogged', areaCm2: areaCm2(cell) };
    const manuredFor = Math.max(...seasons);
    if (manuredFor <= season - intervalYears) return { code: 'due', manuredFor, areaCm2: areaCm2(cell) };
    return { code: 'not-yet', manuredFor, dueFor: manuredFor + intervalYears, areaCm2: areaCm2(cell) };
  };
  return grid.cells.map((cell) => ({ cell, reason: reasonOf(cell) }));
}

// One line for each reason, whatever the pieces.
function gathered(reasons: readonly TurnReason[]): TurnReason[] {
  const lines = new Map<string, TurnReason>();
  for (const reason of reasons) {
    const key = 'manuredFor' in reason ? `${reason.code} ${reason.manuredFor}` : reason.code;
    lines.set(key, { ...reason, areaCm2: reason.areaCm2 + (lines.get(key)?.areaCm2 ?? 0) });
  }
  return [...lines.values()].sort((a, b) => b.areaCm2 - a.areaCm2);
}
