import 'server-only';
import { z } from 'zod';
import { type BedRecord, bedsStanding } from '@/lib/data/bed';
import { type CourseRecord, coursesOf } from '@/lib/data/course';
import { cropsOf } from '@/lib/data/crop';
import { byNumber, holdingsOfMember } from '@/lib/data/holding';
import { type PlantingRecord, plantingsIn } from '@/lib/data/planting';
import { settingsOn } from '@/lib/data/setting';
import { type CourseCost, type CostLine, costOf, levels, turnsOf } from '@/lib/domain/course/cost';
import { openKey } from '@/lib/domain/course/instance';
import { areaCm2, overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { type CourseQuestion, courseQuestion } from './course-instance';
import { query } from '../operation';
import { boardOf } from './board-of';
import { isLost } from './is-lost';
import { openCourse, openHolding } from './open-holding';
import type { Board, Found, Progress, Wishes } from './wishes';

/** What a form for a new course needs: beds, crops, and what was wished for before. */
export const readCourseForm = query({
  name: 'read-course-form',
  allow: canEnter,
  input: z.object({ holdingId: z.uuid().nullish().catch(null), from: z.uuid().nullish().catch(null) }),
  read: async (context, { holdingId, from }) => {
    const { db, scope, today } = context;
    const own = (await holdingsOfMember(db, scope, scope.memberId, today)).filter(({ plots }) => plots.length);
    const holding = holdingId ? await openHolding(context, holdingId) : (own[0] ?? null);
    if (!holding) return { holding: null, courses: [], today };
    const plotIds = holding.plots.map(({ id }) => id);
    const [beds, crops, courses] = await Promise.all([
      bedsStanding(db, scope, today, today, plotIds),
      cropsOf(db, scope),
      coursesOf(db, scope, [holding.id]),
    ]);
    const numbers = new Map(holding.plots.map(({ id, number }) => [id, number]));
    const before = courses.find(({ id }) => id === from) ?? null;
    const year = Number(today.slice(0, 4));
    const frames = [...new Set(beds.map(({ frameId }) => frameId))];
    const standing = await plantingsIn(db, scope, crops, { from: year, to: year }, frames);
    return {
      today,
      units: scope.units,
      timeZone: scope.timeZone,
      holding: { id: holding.id, plots: holding.plots.map(({ number }) => number) },
      others: own
        .filter(({ id }) => id !== holding.id)
        .map(({ id, plots }) => ({ id, plots: plots.map(({ number }) => number) })),
      beds: beds
        .map(({ id, name, plotId, footprint }) => {
          return { id, name, plotNumber: numbers.get(plotId) ?? '', areaCm2: areaCm2(footprint) };
        })
        .sort((a, b) => byNumber(a.plotNumber, b.plotNumber) || byNumber(a.name, b.name)),
      usual: usualOf(standing, beds),
      crops: [...crops.values()].map(({ key, name, cropGroup }) => ({ key, name, cropGroup })),
      courses: courses.map(headOf),
      before: before && { firstSeason: before.firstSeason, years: before.years, wishes: before.wishes as Wishes },
    };
  },
});

// What is grown this season, by group, the largest first: a beginning for the wishes.
function usualOf(standing: readonly PlantingRecord[], beds: readonly BedRecord[]): Wishes['options'] {
  const areas = new Map<string, number>();
  for (const { frameId, footprint, cropGroup } of standing)
    for (const bed of beds) {
      const shared = bed.frameId === frameId ? overlap(bed.footprint, footprint) : null;
      if (shared && cropGroup && cropGroup !== 'standing')
        areas.set(cropGroup, (areas.get(cropGroup) ?? 0) + areaCm2(shared));
    }
  return [...areas].map(([key, cm2]) => ({ key, areaCm2: cm2 })).sort((a, b) => b.areaCm2 - a.areaCm2);
}

function headOf({ id, firstSeason, years, state, askedAt, takenOnAt, found }: CourseRecord) {
  return { id, firstSeason, years, state, askedAt, takenOnAt, isMoved: (found as Found | null)?.seconds === null };
}

/** A line of what a plan costs, in the terms of its ground. */
export type NamedLine =
  | {
      readonly level: 'rules';
      readonly bedId: string;
      readonly season: number;
      readonly rule: string;
      readonly areaCm2: number;
    }
  | { readonly level: 'shortfall'; readonly key: string; readonly season: number; readonly areaCm2: number }
  | {
      readonly level: 'order' | 'moves';
      readonly bedId: string;
      readonly season: number;
      readonly rule: string | null;
      readonly areaCm2: number;
    };

/** A course: how far it is, or the plan with what it costs, what clashes, and the turns of each autumn. */
export const readCourse = query({
  name: 'read-course',
  allow: canEnter,
  input: z.object({ courseId: z.uuid() }),
  read: async (context, { courseId }) => {
    const { db, scope, today, now } = context;
    const { course, holding } = await openCourse(context, courseId);
    const wishes = course.wishes as Wishes;
    const { firstSeason, years } = course;
    const question = await courseQuestion({ db, scope, today }, holding, { firstSeason, years, wishes });
    const common = {
      ...headOf(course),
      wishes,
      units: scope.units,
      timeZone: scope.timeZone,
      holding: { id: holding.id, plots: holding.plots.map(({ number }) => number) },
      isLost: isLost(course, now),
      progress: course.progress as Progress | null,
      beds: question.beds.map(({ bed, plotNumber }) => ({
        id: bed.id,
        name: bed.name,
        plotNumber,
        areaCm2: areaCm2(bed.footprint),
      })),
      kept: question.kept.map(({ bed, plotNumber }) => ({ id: bed.id, name: bed.name, plotNumber })),
      options: question.instance.options.map(({ key }) => ({
        key,
        name: key === openKey ? 'left open' : (question.crops.get(key)?.name ?? key),
        cropGroup: question.crops.get(key)?.cropGroup ?? null,
      })),
    };
    const board = boardOf(course);
    const isWhole = board && question.beds.every(({ bed }) => board[bed.id]?.length === years);
    if (!board || !isWhole) return { ...common, plan: null, isOutOfDate: board !== null };
    const settings = await settingsOn(db, scope, today);
    const found = course.found as Found;
    return { ...common, isOutOfDate: false, plan: planOf(question, board, found, settings, firstSeason) };
  },
});

function planOf(
  question: CourseQuestion,
  board: Board,
  found: Found,
  settings: Awaited<ReturnType<typeof settingsOn>>,
  firstSeason: number,
) {
  const { instance, beds } = question;
  const plan = beds.map(({ bed }) => board[bed.id] ?? []);
  const { cost, lines } = costOf(instance, plan);
  const foundPlan = beds.map(({ bed }) => found.board[bed.id] ?? []);
  const isFoundWhole = foundPlan.every((row) => row.length === instance.years);
  const foundCost: CourseCost = isFoundWhole ? costOf(instance, foundPlan).cost : found.cost;
  const density = materialOf('horse-manure')?.densityGPerL ?? 1;
  const loadG = settings.barrowLitres * density;
  return {
    board,
    cost,
    foundCost,
    isChanged: JSON.stringify(plan) !== JSON.stringify(foundPlan),
    /** The ground has changed since it was worked out: another plan may do better now. */
    isAged: levels.some((level) => foundCost[level] !== found.cost[level]),
    gap: found.gap,
    seconds: found.seconds,
    conflict: found.conflict,
    conflictKnown: found.conflictKnown,
    lines: lines.map((line) => named(line, question, firstSeason)).sort((a, b) => a.season - b.season),
    turns: turnsOf(instance, plan).map(({ areaCm2: dueCm2, beds: due }, year) => ({
      season: firstSeason + year,
      areaCm2: dueCm2,
      loads: Math.ceil(((dueCm2 / 10_000) * settings.manureRateGPerM2) / loadG),
      bedIds: due.map((at) => beds[at]?.bed.id ?? ''),
    })),
  };
}

function named(line: CostLine, { beds }: CourseQuestion, firstSeason: number): NamedLine {
  const season = firstSeason + line.year;
  if (line.level === 'shortfall') return { level: 'shortfall', key: line.option, season, areaCm2: line.areaCm2 };
  const bedId = beds[line.bed]?.bed.id ?? '';
  if (line.level === 'rules') return { level: 'rules', bedId, season, rule: line.rule, areaCm2: line.areaCm2 };
  return { level: line.level, bedId, season, rule: line.rule, areaCm2: line.areaCm2 };
}
