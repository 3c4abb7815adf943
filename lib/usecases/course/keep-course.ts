import 'server-only';
import { keepBoard, noteTakenOn } from '@/lib/data/course';
import { createPlantings, type NewPlanting, retirePlantings } from '@/lib/data/planting';
import { openKey } from '@/lib/domain/course/instance';
import { overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { changeBoardInput, takeOnInput } from '@/lib/schemas/ground/course';
import { tellHolders } from '../ground/tell-holders';
import { mutation, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { boardOf } from './board-of';
import { type CourseQuestion, courseQuestion } from './course-instance';
import { openCourse } from './open-holding';
import type { Board, Wishes } from './wishes';

async function openSolved({ tx, scope, today }: WriteContext, courseId: string) {
  const at = { db: tx, scope, today };
  const { course, holding } = await openCourse(at, courseId);
  const board = boardOf(course);
  if (!board) refuse('course-not-solved');
  const { firstSeason, years } = course;
  const question = await courseQuestion(at, holding, { firstSeason, years, wishes: course.wishes as Wishes });
  if (!question.beds.every(({ bed }) => board[bed.id]?.length === years)) refuse('course-out-of-date');
  return { course, holding, board, question };
}

/** Change a plan by hand; it is judged at once. What was worked out stays beside it. */
export const changeBoard = mutation({
  name: 'change-board',
  allow: canEnter,
  input: changeBoardInput,
  write: async (context, { courseId, cells }) => {
    const { course, holding, board, question } = await openSolved(context, courseId);
    const keys = new Set(question.instance.options.map(({ key }) => key));
    const changed: Record<string, string[]> = Object.fromEntries(
      Object.entries(board).map(([id, row]) => [id, [...row]]),
    );
    let count = 0;
    for (const { bedId, season, key } of cells) {
      const row = changed[bedId];
      const year = season - course.firstSeason;
      if (!row || row[year] === undefined) refuse('course-out-of-date');
      if (!keys.has(key)) refuse('not-in-course', { field: 'cells' });
      if (row[year] !== key) count++;
      row[year] = key;
    }
    await keepBoard(context.tx, context.scope, courseId, changed);
    if (count > 0)
      context.note({
        verb: 'changed by hand',
        thing: 'course',
        thingId: courseId,
        forHoldingId: holding.id,
        after: { entries: count },
      });
    return { changed: count };
  },
});

/** Take a plan on: its entries become the plan of those seasons on each bed, in place of what was planned there. */
export const takeOnCourse = mutation({
  name: 'take-on-course',
  allow: canEnter,
  input: takeOnInput,
  write: async (context, { courseId, which }) => {
    const { tx, scope, now, note } = context;
    const { course, holding, board, question } = await openSolved(context, courseId);
    const seasons = Array.from(
      { length: which === 'first' ? 1 : course.years },
      (_, year) => course.firstSeason + year,
    );
    await retirePlantings(tx, scope, replaced(question, seasons), now);
    const entries = seasons.flatMap((season, year) => entriesOf(question, board, holding.id, season, year));
    await createPlantings(tx, scope, entries);
    await noteTakenOn(tx, scope, courseId, now);
    note({
      verb: 'taken on',
      thing: 'course',
      thingId: courseId,
      forHoldingId: holding.id,
      after: { seasons, entries: entries.length },
    });
    for (const plot of holding.plots) await tellHolders(context, { plot, holding });
    return { entries: entries.length };
  },
});

// Only what is planned and not begun: a record of what stands or stood is never put aside by a plan.
function replaced({ plantings, beds }: CourseQuestion, seasons: readonly number[]): string[] {
  return plantings
    .filter(({ planned, sownOn, plantedOn }) => planned && sownOn === null && plantedOn === null)
    .filter(({ firstSeason, lastSeason }) => firstSeason === lastSeason && seasons.includes(firstSeason))
    .filter((one) => beds.some(({ bed }) => bed.frameId === one.frameId && overlap(bed.footprint, one.footprint)))
    .map(({ id }) => id);
}

function entriesOf(
  { beds }: CourseQuestion,
  board: Board,
  holdingId: string,
  season: number,
  year: number,
): NewPlanting[] {
  return beds.flatMap(({ bed }): NewPlanting[] => {
    const cropKey = board[bed.id]?.[year] ?? openKey;
    if (cropKey === openKey) return [];
    const { id: bedId, frameId, footprint } = bed;
    const nothing = { variety: null, sownOn: null, plantedOn: null, clearedOn: null, notes: null };
    return [
      {
        bedId,
        frameId,
        footprint,
        holdingId,
        cropKey,
        ...nothing,
        firstSeason: season,
        lastSeason: season,
        planned: true,
      },
    ];
  });
}
