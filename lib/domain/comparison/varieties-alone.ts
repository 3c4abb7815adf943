import type { BedResult, Question } from './bed-result';
import { canBeTold, neighboursIn, shownCells } from './shown-cells';

/**
 * The varieties that can be looked at alone, under one question.
 *
 * Method: most held first, each is split off where every group, and what stands apart, still falls into parts of three neighbours or more, or of
 * none: the beds of that variety, of each other one that is split off, and all the rest together. So neither a group of one variety, nor
 * what is left of a group when several of them are taken away, is of fewer.
 *
 * @param beds      of one crop and season, shared
 * @param question  by which they are grouped; varieties can't be looked at alone under themselves, nor seasons
 * @returns         keys of varieties, most held first
 * @source          as `shownCells`
 * @example         double dug: four of Sturon and one of another → none; with three of another → Sturon and, if told by itself, the other
 */
export function varietiesAlone(beds: readonly BedResult[], question: Question): string[] {
  if (question === 'variety' || question === 'season') return [];
  const { shown, apart } = shownCells(beds, ({ groupOf }) => groupOf[question]);
  const parts = [...shown.map((cell) => cell.beds), apart];
  const varieties = shownCells(beds, ({ groupOf }) => groupOf.variety).shown.toSorted(
    (one, other) => neighboursIn(other.beds) - neighboursIn(one.beds) || (one.key < other.key ? -1 : 1),
  );
  return varieties.reduce<string[]>((alone, { key }) => {
    const split = [...alone, key];
    return parts.every((part) => splitsWell(part, split)) ? split : alone;
  }, []);
}

function splitsWell(part: readonly BedResult[], alone: readonly string[]): boolean {
  const columnOf = ({ groupOf: { variety } }: BedResult) =>
    variety !== null && alone.includes(variety) ? variety : null;
  return [...alone, null].every((column) => canBeTold(part.filter((bed) => columnOf(bed) === column)));
}
