import pg from 'pg';
import { courseProgramme } from '@/lib/domain/course/course-programme';
import { type Solver, startSolver } from '@/lib/platform/solver';
import { bestCourse } from '@/lib/usecases/course/best-course';
import { say } from '../../scripts/start/steps.mjs';
import { drawnInstance } from '../fixtures/courses';
import { type Load, roundOf } from './closed-loop';
import { page } from './http';
import { serve } from './service';
import { figure, type Section, times } from './table';
import { mainPages, type Visitor, visitorOf } from './visitors';

type Size = { readonly beds: number; readonly years: number; readonly groups: number };
type Solved = { readonly seconds: number[]; readonly unproven: number; readonly memoryMb: number };

const usual: Size = { beds: 8, years: 4, groups: 6 };

/** Courses drawn by lot, to proven optimum: the middle and the worst, and how they grow with beds and years. */
export async function measurePlanner(instances: number): Promise<Section> {
  say(`planner: ${instances} courses of 8 beds, then growing ones`);
  const solver = startSolver();
  try {
    const base = await solveAll(solver, usual, instances);
    const few = Math.max(3, Math.round(instances / 5));
    const rows = [[`${sizeWords(usual)} (${instances} courses)`, ...cells(base, base)]];
    for (const size of [
      { ...usual, beds: 4 },
      { ...usual, beds: 12 },
      { ...usual, years: 2 },
      { ...usual, years: 6 },
    ])
      rows.push([`${sizeWords(size)} (${few} courses)`, ...cells(await solveAll(solver, size, few), base)]);
    return {
      title: 'The course planner, to proof at every level',
      heads: [
        'size',
        'median, s',
        'worst, s',
        'median, times the first row',
        'not proven in 60 s',
        'solver’s memory, MB',
      ],
      rows,
      notes: [
        'Drawn by lot with history, troubles, wishes, an order and a board; the conflict, where wishes clash, is worked out within the same time.',
      ],
    };
  } finally {
    await solver.stop();
  }
}

function sizeWords({ beds, years, groups }: Size): string {
  return `${beds} beds, ${years} years, ${groups} groups`;
}

function cells({ seconds, unproven, memoryMb }: Solved, base: Solved): string[] {
  return [
    figure(median(seconds), 2),
    figure(Math.max(...seconds), 2),
    times(median(seconds), median(base.seconds)),
    figure(unproven),
    figure(memoryMb),
  ];
}

async function solveAll(solver: Solver, size: Size, count: number): Promise<Solved> {
  const seconds: number[] = [];
  let unproven = 0;
  for (let seed = 1; seed <= count; seed++) {
    const instance = drawnInstance(40_000 + seed, size);
    const from = performance.now();
    const { gap } = await bestCourse(solver, instance, { seconds: 60 });
    seconds.push((performance.now() - from) / 1000);
    if (gap) unproven++;
  }
  const { programme, objectives } = courseProgramme(drawnInstance(40_001, size));
  const { memoryBytes } = await solver.solve(programme, objectives.rules, { seconds: 60 });
  return { seconds, unproven, memoryMb: memoryBytes / 1e6 };
}

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** Other people's pages while a course is being worked out in the same process, and while none is. */
export async function measurePlannerBeside(
  databaseUrl: string,
  visitors: readonly Visitor[],
  seconds: number,
): Promise<Section> {
  say('planner: other requests with and without it');
  const service = await serve(databaseUrl, { COURSE_SECONDS: '600' });
  const client = new pg.Client({ connectionString: databaseUrl });
  await client.connect();
  const week = mainPages[0] ?? { pathFor: () => '/' };
  const visit = async (connection: number) => {
    const visitor = visitorOf(visitors, false, connection);
    await page(`${service.address}${week.pathFor(visitor)}`, visitor.cookie);
  };
  const loads: { without: Load[]; beside: Load[] } = { without: [], beside: [] };
  try {
    await roundOf(visit, 4, seconds / 2);
    for (let round = 0; round < 3; round++) {
      loads.without.push(await roundOf(visit, 4, seconds));
      const stop = await keepSolving(client);
      loads.beside.push(await roundOf(visit, 4, seconds));
      await stop();
    }
  } finally {
    await client.end();
    await service.stop();
  }
  const p95 = (all: readonly Load[]) => median(all.map(({ p95Ms }) => p95Ms));
  const rate = (all: readonly Load[]) => median(all.map(({ perSecond }) => perSecond));
  return {
    title: 'This week, 4 connections, while a course is worked out in the same process',
    heads: ['', 'without', 'with it running', 'ratio'],
    rows: [
      [
        'p95, ms',
        figure(p95(loads.without), 1),
        figure(p95(loads.beside), 1),
        times(p95(loads.beside), p95(loads.without)),
      ],
      [
        'requests/s',
        figure(rate(loads.without)),
        figure(rate(loads.beside)),
        times(rate(loads.beside), rate(loads.without)),
      ],
    ],
    notes: ['Three rounds of each by turns. The solver is a process of its own, of low priority.'],
  };
}

/** Have the service work at a course that takes long, until it is told to stop. */
async function keepSolving(client: pg.Client): Promise<() => Promise<void>> {
  const { rows } = await client.query<{ id: string }>(
    `WITH one AS (
       SELECT h."societyId", h."holdingId", h."memberId" FROM "HoldingMember" h ORDER BY h."id" LIMIT 1
     ), beds AS (
       SELECT json_agg(b."id") AS ids FROM "Bed" b JOIN "Tenancy" t ON t."plotId" = b."plotId" JOIN one ON one."holdingId" = t."holdingId"
     )
     INSERT INTO "Course" ("id", "societyId", "holdingId", "askedByMemberId", "firstSeason", "years", "wishes")
     SELECT gen_random_uuid(), one."societyId", one."holdingId", one."memberId", 2030, 6, json_build_object(
       'options', $1::json, 'keepOrder', true, 'evenTurns', true, 'bedIds', beds.ids, 'cells', '[]'::json)
     FROM one, beds RETURNING "id"`,
    [
      JSON.stringify(
        ['alliums', 'brassicas', 'legumes', 'roots', 'potatoes', 'cucurbits', 'leaves'].map((key, at) => ({
          key,
          areaCm2: 41_111 + 7013 * at,
        })),
      ),
    ],
  );
  const id = rows[0]?.id ?? '';
  await client.query(`SELECT graphile_worker.add_job('solve-course', json_build_object('id', $1::text))`, [id]);
  const state = async () => (await client.query('SELECT "state" FROM "Course" WHERE "id" = $1', [id])).rows[0]?.state;
  while ((await state()) === 'waiting') await new Promise((resolve) => setTimeout(resolve, 20));
  return async () => {
    const { rowCount } = await client.query(
      `UPDATE "Course" SET "state" = 'cancelled' WHERE "id" = $1 AND "state" = 'solving'`,
      [id],
    );
    if (rowCount === 0) throw new Error(`the course was over before the round was: it is ${await state()}`);
    // The solver notices within its beat.
    await new Promise((resolve) => setTimeout(resolve, 1500));
  };
}
