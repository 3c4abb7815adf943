import glpk, { type GLPK } from 'glpk.js/node';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { courseProgramme } from '@/lib/domain/course/course-programme';
import { costOf, levels } from '@/lib/domain/course/cost';
import type { CourseInstance } from '@/lib/domain/course/instance';
import { type Programme, type Row, type Term, withRows } from '@/lib/domain/programme/programme';
import { type Solver, startSolver } from '@/lib/platform/solver';
import { bestCourse } from '@/lib/usecases/course/best-course';
import { combinationsOf, drawnInstance, exhaustiveCost } from '../fixtures/courses';

let solver: Solver;
beforeAll(() => {
  solver = startSolver();
});
afterAll(() => solver.stop());

const sizes = [1, 2, 3, 4].flatMap((beds) =>
  [1, 2, 3, 4].flatMap((years) => [1, 2, 3, 4].map((groups) => ({ beds, years, groups }))),
);

/** Plans tried for one instance at the most. */
const mostPlans = 120_000;

describe('against trying every plan', () => {
  it.each(sizes)('%o: the same cost at every level', async (size) => {
    const first = size.beds * 100 + size.years * 10 + size.groups;
    const tried: CourseInstance[] = [];
    for (let seed = 0; tried.length < 2 && seed < 500; seed++) {
      const instance = drawnInstance(1000 * seed + first, size);
      if (combinationsOf(instance) <= mostPlans) tried.push(instance);
    }
    expect(tried).toHaveLength(2);
    for (const instance of tried) {
      const { cost, plan, gap } = await bestCourse(solver, instance, { seconds: 60 });
      expect(gap).toBeNull();
      expect(cost).toEqual(exhaustiveCost(instance));
      expect(costOf(instance, plan).cost).toEqual(cost);
    }
  });
});

describe('against a second solver', () => {
  it.each(Array.from({ length: 30 }, (_, at) => at))('instance %i: GLPK agrees, level by level', async (at) => {
    const instance = drawnInstance(7000 + at, { beds: 4 + (at % 2), years: 3, groups: 5 });
    const { cost } = await bestCourse(solver, instance, { seconds: 60 });
    const other = await glpk();
    const { programme, objectives, hold } = courseProgramme(instance);
    const held: Row[] = [];
    // The first two levels: what a grower would quarrel about. The rest of the levels are HiGHS against trying every plan.
    for (const level of levels.slice(0, 2)) {
      if (objectives[level].length === 0) continue;
      const value = await minimum(other, withRows(programme, held), objectives[level]);
      // GLPK takes a value as whole when it is so to a hundred-thousandth: that is some square centimetres.
      expect(Math.abs(value * 10_000 - cost[level])).toBeLessThan(50);
      held.push(hold(level, cost[level]));
    }
  });
});

async function minimum(other: GLPK, { columns, rows }: Programme, objective: readonly Term[]): Promise<number> {
  const name = (column: number) => `c${column}`;
  const vars = (terms: readonly Term[]) => terms.map(([column, coef]) => ({ name: name(column), coef }));
  const bounds = (least: number, most: number) => {
    const [below, above] = [Number.isFinite(least), Number.isFinite(most)];
    const type = below && above ? (least === most ? other.GLP_FX : other.GLP_DB) : below ? other.GLP_LO : other.GLP_UP;
    return { type, lb: below ? least : 0, ub: above ? most : 0 };
  };
  const costs = new Map<number, number>();
  for (const [column, coef] of objective) costs.set(column, (costs.get(column) ?? 0) + coef);
  const { result } = other.solve(
    {
      name: 'course',
      objective: { direction: other.GLP_MIN, name: 'cost', vars: vars([...costs]) },
      subjectTo: rows.map(({ terms, least, most }, at) => ({
        name: `r${at}`,
        vars: vars(terms),
        bnds: bounds(least, most),
      })),
      bounds: columns.map(({ lower, upper }, at) => ({ name: name(at), ...bounds(lower, upper) })),
      // As binaries they would lose their bounds, and with them what is fixed.
      generals: columns.flatMap(({ whole }, at) => (whole ? [name(at)] : [])),
    },
    { msglev: other.GLP_MSG_OFF, mipgap: 0, tmlim: 60 },
  );
  expect(result.status).toBe(other.GLP_OPT);
  return result.z;
}

describe('wishes that clash', () => {
  it('are named, and no more of them than need be', async () => {
    const instance = drawnInstance(5, { beds: 3, years: 2, groups: 3 });
    const bare = instance.beds.map((bed) => ({
      ...bed,
      areaCm2: 100_000,
      breaks: bed.breaks
        .filter(({ key }) => key !== 'trouble')
        .map((one) => ({ ...one, breakYears: 3, areaCm2: 100_000, historyCm2: [0, 0] })),
      advice: [],
      fixed: [null, null] as (string | null)[],
    }));
    bare[0] = { ...(bare[0] as (typeof bare)[0]), fixed: ['alliums', 'alliums'] };
    const asked = { ...instance, beds: bare, wanted: [{ option: 'legumes', areaCm2: 100_000 }] };
    const { conflict, cost } = await bestCourse(solver, asked, { seconds: 60 });
    expect(conflict).toEqual([
      { kind: 'fixed', bed: 0, year: 0, option: 'alliums' },
      { kind: 'fixed', bed: 0, year: 1, option: 'alliums' },
    ]);
    expect(cost.rules).toBe(400_000);
    // Two groups that want two of the three beds each: either alone could have them.
    const beds = bare.map((bed) => ({
      ...bed,
      breaks: bed.breaks.map((one) => ({ ...one, breakYears: 0 })),
      fixed: [null, null],
    }));
    const wanted = ['legumes', 'brassicas'].map((option) => ({ option, areaCm2: 200_000 }));
    expect((await bestCourse(solver, { ...asked, beds, wanted }, { seconds: 60 })).conflict).toEqual(
      wanted.map((wish) => ({ kind: 'wanted', ...wish })),
    );
  });

  it('two beds, two years, one kin twice with a break of three: impossible', async () => {
    const only = drawnInstance(5, { beds: 2, years: 2, groups: 1 });
    const beds = only.beds.map((bed) => ({
      ...bed,
      areaCm2: 100_000,
      advice: [],
      breaks: [{ key: 'alliums', hosts: ['alliums'], breakYears: 3, weight: 4, areaCm2: 100_000, historyCm2: [0, 0] }],
      fixed: [null, null],
    }));
    const asked = { ...only, beds, wanted: [{ option: 'alliums', areaCm2: 200_000 }] };
    const { conflict, cost } = await bestCourse(solver, asked, { seconds: 60 });
    expect(conflict).toEqual([{ kind: 'wanted', option: 'alliums', areaCm2: 200_000 }]);
    expect(cost).toMatchObject({ rules: 0, shortfall: 200_000 });
  });
});

describe('time and stopping', () => {
  it('gives what it has when time runs out, and says that it is not proven', async () => {
    const instance = drawnInstance(99, { beds: 14, years: 6, groups: 7, tight: true });
    const { gap, plan } = await bestCourse(solver, instance, { seconds: 1.5 });
    expect(plan).toHaveLength(14);
    expect(gap).not.toBeNull();
  });

  it('stops at once when it is told to', async () => {
    const doomed = startSolver();
    const running = bestCourse(doomed, drawnInstance(98, { beds: 14, years: 6, groups: 7, tight: true }), {
      seconds: 60,
    });
    await doomed.stop();
    await expect(running).rejects.toThrow('stopped');
  });
});
