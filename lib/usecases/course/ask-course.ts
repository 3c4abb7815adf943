import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cancelCourse as writeCancelled, coursesOf, createCourse, createSolvedCourse } from '@/lib/data/course';
import { cropsOf } from '@/lib/data/crop';
import { costOf } from '@/lib/domain/course/cost';
import { openKey } from '@/lib/domain/course/instance';
import { canEnter } from '@/lib/domain/policy/standing';
import { readArea } from '@/lib/domain/quantity/area';
import { askCourseInput, courseInput, moveOneOnInput } from '@/lib/schemas/ground/course';
import { mutation } from '../operation';
import { refuse } from '../refusal';
import { courseQuestion } from './course-instance';
import { isLost } from './is-lost';
import { openCourse, openHolding } from './open-holding';
import type { Found, Wishes } from './wishes';

/** Ask for the best course of a holding's beds over the coming years. It is worked out beside the service, and shown when done. */
export const askCourse = mutation({
  name: 'ask-course',
  allow: canEnter,
  input: askCourseInput,
  write: async ({ tx, scope, today, now, note }, input) => {
    const at = { db: tx, scope, today };
    const holding = await openHolding(at, input.holdingId);
    const year = Number(today.slice(0, 4));
    if (input.firstSeason < year || input.firstSeason > year + 3)
      refuse('course-first-season', { field: 'firstSeason', numbers: { least: year, most: year + 3 } });
    const crops = await cropsOf(tx, scope);
    const options = input.wanted.flatMap(({ key, area }, row) => {
      if (key === '') return [];
      if (!crops.has(key)) refuse('crop-unknown', { field: `wanted.${row}.key`, numbers: { crop: key } });
      const areaCm2 = area.trim() === '' ? 0 : readArea(area, scope.units);
      if (areaCm2 === null) refuse('area-wrong', { field: `wanted.${row}.area` });
      return [{ key, areaCm2 }];
    });
    if (options.length === 0) refuse('nothing-wanted', { field: 'wanted.0.key' });
    const twice = options.find(({ key }, row) => options.findIndex((one) => one.key === key) < row);
    if (twice) refuse('wanted-twice', { field: 'wanted.0.key', numbers: { name: crops.get(twice.key)?.name ?? '' } });
    const plotIds = holding.plots.map(({ id }) => id);
    const own = new Set((await bedsStanding(tx, scope, today, today, plotIds)).map(({ id }) => id));
    if (input.bedIds.length === 0) refuse('no-beds-to-plan', { field: 'bedIds' });
    if (![...input.bedIds, ...input.cells.map(({ bedId }) => bedId)].every((id) => own.has(id)))
      refuse('beds-not-yours');
    const last = input.firstSeason + input.years - 1;
    const cells = input.cells.filter(
      ({ season, bedId }) => season >= input.firstSeason && season <= last && input.bedIds.includes(bedId),
    );
    for (const { key } of cells)
      if (key !== openKey && !crops.has(key)) refuse('crop-unknown', { field: 'cells', numbers: { crop: key } });
    const open = (await coursesOf(tx, scope, [holding.id])).some(
      (course) => (course.state === 'waiting' || course.state === 'solving') && !isLost(course, now),
    );
    if (open) refuse('one-course-at-a-time');
    const { keepOrder, evenTurns, bedIds, firstSeason, years } = input;
    const wishes: Wishes = { options, keepOrder, evenTurns, bedIds, cells };
    const question = await courseQuestion(at, holding, { firstSeason, years, wishes });
    if (question.beds.length === 0) refuse('no-beds-to-plan', { field: 'bedIds' });
    const courseId = await createCourse(tx, scope, { holdingId: holding.id, firstSeason, years, wishes }, now);
    note({
      verb: 'asked',
      thing: 'course',
      thingId: courseId,
      forHoldingId: holding.id,
      after: { firstSeason, years },
    });
    return { courseId };
  },
});

/** Cancel a course that is still being worked out. */
export const cancelCourse = mutation({
  name: 'cancel-course',
  allow: canEnter,
  input: courseInput,
  write: async ({ tx, scope, today, now, note }, { courseId }) => {
    const { holding } = await openCourse({ db: tx, scope, today }, courseId);
    if (!(await writeCancelled(tx, scope, courseId, now))) refuse('course-ended');
    note({ verb: 'cancelled', thing: 'course', thingId: courseId, forHoldingId: holding.id });
    return { courseId };
  },
});

/**
 * Propose next season by moving everything one bed on, as the board in the shed does it: each bed takes what stands now on
 * the bed before it on its plot, the first what stands on the last. Judged like any other plan.
 */
export const moveOneOn = mutation({
  name: 'move-one-on',
  allow: canEnter,
  input: moveOneOnInput,
  write: async ({ tx, scope, today, now, note }, { holdingId }) => {
    const at = { db: tx, scope, today };
    const holding = await openHolding(at, holdingId);
    const firstSeason = Number(today.slice(0, 4)) + 1;
    const plotIds = holding.plots.map(({ id }) => id);
    const beds = await bedsStanding(tx, scope, today, today, plotIds);
    const crops = await cropsOf(tx, scope);
    const groups = [...crops.values()].filter(({ key, cropGroup }) => key === cropGroup).map(({ key }) => key);
    const wishes: Wishes = {
      options: groups.map((key) => ({ key, areaCm2: 0 })),
      keepOrder: false,
      evenTurns: false,
      bedIds: beds.map(({ id }) => id),
      cells: [],
    };
    const { instance, beds: planned } = await courseQuestion(at, holding, { firstSeason, years: 1, wishes });
    if (planned.length === 0) refuse('no-beds-to-plan');
    const moved = planned.map(({ bed }, nth) => {
      const plot = planned.flatMap((one, at_) => (one.bed.plotId === bed.plotId ? [at_] : []));
      const before = plot[(plot.indexOf(nth) + plot.length - 1) % plot.length] ?? nth;
      return [instance.beds[before]?.before ?? openKey];
    });
    const found: Found = {
      board: Object.fromEntries(planned.map(({ bed }, nth) => [bed.id, moved[nth] ?? [openKey]])),
      cost: costOf(instance, moved).cost,
      gap: null,
      conflict: null,
      conflictKnown: false,
      seconds: null,
    };
    const course = { holdingId, firstSeason, years: 1, wishes, found };
    const courseId = await createSolvedCourse(tx, scope, course, now);
    note({
      verb: 'moved one on',
      thing: 'course',
      thingId: courseId,
      forHoldingId: holding.id,
      after: { firstSeason },
    });
    return { courseId };
  },
});
