import { z } from 'zod';
import { ticked, wholeNumber } from '../text';
import { form, rowId, writeId } from '../write';

const optionWords = 'Choose a crop or a group.';
const key = z.string({ error: optionWords }).min(1, optionWords).max(80, optionWords);
const optionalKey = z.string({ error: optionWords }).max(80, optionWords).default('');
const seasonWords = 'Give the season as a year, such as 2027.';
const season = z.number(seasonWords).int(seasonWords).min(1900, seasonWords).max(2199, seasonWords);
const kindWords = 'Say whether it must stand there, or would rather.';
const boardCells = z
  .array(form({ bedId: rowId, season, key }), { error: 'Choose what stands on each bed.' })
  .max(600, 'That is more than one plan holds.');

/** How many crops or groups a form asks for at the most. */
export const wishRows = 8;

/** What is wanted: up to eight crops or groups with an area each, in the order of the course; and what is fixed where. */
export const askCourseInput = form({
  writeId,
  holdingId: rowId,
  firstSeason: wholeNumber('the first season', 1900, 2199),
  years: wholeNumber('the number of seasons', 1, 6),
  wanted: z
    .array(
      form({
        key: optionalKey,
        area: z.string({ error: 'Give an area, such as 12.' }).max(20, 'That is too long for an area.').default(''),
      }),
      {
        error: optionWords,
      },
    )
    .max(wishRows, `Ask for up to ${wishRows} crops or groups.`),
  keepOrder: ticked(),
  evenTurns: ticked(),
  bedIds: z.array(rowId, { error: 'Tick the beds to plan.' }).max(200, 'That is more than one plan holds.'),
  cells: z
    .array(form({ bedId: rowId, season, kind: z.enum(['must', 'rather'], kindWords), key }), { error: kindWords })
    .max(600, 'That is more than one plan holds.'),
});

export const courseInput = form({ writeId, courseId: rowId });
export const changeBoardInput = form({ writeId, courseId: rowId, cells: boardCells });
export const takeOnInput = form({
  writeId,
  courseId: rowId,
  which: z.enum(['first', 'all'], 'Say which seasons to take on.'),
});
export const moveOneOnInput = form({ writeId, holdingId: rowId });
