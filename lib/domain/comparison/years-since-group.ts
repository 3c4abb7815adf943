import type { Season } from '../calendar/season-of';
import { cellsOf, liesIn } from '../ground/cells';
import type { Footprint } from '../ground/footprint';
import type { RecordedPlanting } from '../rotation/recorded-planting';
import { groundShare } from './ground-share';

const bands = ['1-2', '3', '4+'] as const;
export type YearsBand = (typeof bands)[number];

/** From so many years on all is one band: most breaks are over by then. */
const longest = 4;

/**
 * How many years lie between a planting and the last of its host group on the same ground.
 *
 * Method: the ground is cut along the edges of what stood there, and each piece is followed back season by season. Two years mean that one
 * lay between. A season without any record ends the search: it may have held one. A band is told that holds for four fifths of the ground.
 *
 * @param ground      the planting's footprint [cm]
 * @param hostGroups  of its crop; none: outside the rotation
 * @param history     what stood in the same frame, in any order; itself, and what came in its season or later, changes nothing
 * @returns           null where it is not known, not the same on all of the ground, or the crop does not rotate
 * @source            common practice
 * @example           onions for 2027: leeks in 2026 → '1-2'; beans, then beans, then leeks in 2024 → '3'; 2025 not on record → null
 */
export function yearsSinceGroup(
  ground: Footprint,
  season: Season,
  hostGroups: readonly string[],
  history: readonly RecordedPlanting[],
): YearsBand | null {
  if (hostGroups.length === 0) return null;
  const earlier = history.filter(
    ({ firstSeason, lastSeason }) => firstSeason < season && lastSeason > season - longest,
  );
  const { cells } = cellsOf(
    ground,
    earlier.map(({ footprint }) => footprint),
  );
  const told = cells.map((cell) => {
    const here = earlier.filter(({ footprint }) => liesIn(cell, footprint));
    return { cell, band: bandOf(season, hostGroups, here) };
  });
  const holds = (band: YearsBand) =>
    groundShare(
      ground,
      told.flatMap((one) => (one.band === band ? [one.cell] : [])),
    ) === 'all';
  return bands.find(holds) ?? null;
}

function bandOf(season: Season, hostGroups: readonly string[], here: readonly RecordedPlanting[]): YearsBand | null {
  for (let years = 1; years < longest; years++) {
    const stood = here.filter(
      ({ firstSeason, lastSeason }) => firstSeason <= season - years && lastSeason >= season - years,
    );
    if (stood.length === 0) return null;
    if (stood.some((one) => one.hostGroups.some((group) => hostGroups.includes(group)))) return years < 3 ? '1-2' : '3';
  }
  return '4+';
}
