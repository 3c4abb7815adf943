import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { courseProgramme, strictProgramme } from '@/lib/domain/course/course-programme';
import type { CourseInstance } from '@/lib/domain/course/instance';
import { type Row, withRows } from '@/lib/domain/programme/programme';
import { type Solver, startSolver } from '@/lib/platform/solver';

let solver: Solver;
beforeAll(() => {
  solver = startSolver();
});
afterAll(() => solver.stop());

// Hazell, American Journal of Agricultural Economics 53 (1971), pp. 53–62, as given with the data set hazell.vegetables:
// carrot, celery, cucumber, pepper on 200 acres, 10,000 hours, and a rotation row. Published optimum 0, 27.45098, 100, 72.54902.
describe('the vegetable programme, through the solver that plans courses', () => {
  const { POSITIVE_INFINITY: most, NEGATIVE_INFINITY: least } = Number;
  const rows: Row[] = [
    {
      terms: [
        [0, 1],
        [1, 1],
        [2, 1],
        [3, 1],
      ],
      least,
      most: 200,
    },
    {
      terms: [
        [0, 25],
        [1, 36],
        [2, 27],
        [3, 87],
      ],
      least,
      most: 10_000,
    },
    {
      terms: [
        [0, -1],
        [1, 1],
        [2, -1],
        [3, 1],
      ],
      least,
      most: 0,
    },
  ];
  const acres = (whole: boolean) => ({
    columns: Array.from({ length: 4 }, () => ({ lower: 0, upper: most, whole })),
    rows,
  });
  const profit = [253, 443, 284, 516].map((each, at) => [at, -each] as const);

  test('has the published optimum', async () => {
    const { values, objective, status } = await solver.solve(acres(false), profit, { seconds: 20 });
    expect(status).toBe('best');
    expect(values?.map((value) => Number(value.toFixed(5)))).toEqual([0, 27.45098, 100, 72.54902]);
    expect(-(objective ?? 0)).toBeCloseTo(77_996.08, 2);
  });

  // Worked out by trying all whole acres: 0, 28, 100, 72 for 77,956.
  test('in whole acres', async () => {
    const { values, objective } = await solver.solve(acres(true), profit, { seconds: 20 });
    expect(values?.map((value) => Math.round(value))).toEqual([0, 28, 100, 72]);
    expect(Math.round(-(objective ?? 0))).toBe(77_956);
  });
});

// The number of Latin squares of order four is 576 (OEIS A002860): four
// beds, four years, four groups that return after four years, each grown on one bed a year.
test('the planner’s own programme holds exactly 576 plans that are Latin squares of order four', async () => {
  const groups = ['alliums', 'brassicas', 'legumes', 'potatoes'];
  const nothing = [null, null, null, null];
  const instance: CourseInstance = {
    years: 4,
    options: [...groups, 'open'].map((key) => ({ key, hosts: key === 'open' ? [] : [key], takesManure: false })),
    beds: Array.from({ length: 4 }, (_, at) => ({
      id: String(at),
      areaCm2: 10_000,
      breaks: groups.map((key) => ({
        key,
        hosts: [key],
        breakYears: 3,
        weight: 1,
        areaCm2: 10_000,
        historyCm2: [0, 0, 0, 0],
      })),
      advice: [],
      before: null,
      manuredYearsAgo: null,
      fixed: nothing,
      rather: nothing,
      board: nothing,
    })),
    wanted: groups.map((option) => ({ option, areaCm2: 10_000 })),
    order: [],
    follows: [],
    manuringIntervalYears: 3,
    evenTurns: false,
  };
  const { planOf } = courseProgramme(instance);
  const strict = strictProgramme(
    instance,
    instance.wanted.map((wish) => ({ kind: 'wanted', ...wish })),
  );
  const seen = new Set<string>();
  const exclusions: Row[] = [];
  // The first rows of both squares are counted through their symmetry: any first year can be any of 4! orders.
  const firstYear: Row[] = groups.map((key) => ({
    terms: [[columnOf(instance, groups.indexOf(key), 0, key), 1]],
    least: 1,
    most: 1,
  }));
  for (;;) {
    const { status, values } = await solver.solve(withRows(strict, [...firstYear, ...exclusions]), [], { seconds: 60 });
    if (status !== 'best' || !values) break;
    const plan = planOf(values);
    seen.add(JSON.stringify(plan));
    const chosen = plan.flatMap((years, bed) => years.map((key, year) => columnOf(instance, bed, year, key)));
    exclusions.push({
      terms: chosen.map((column) => [column, 1]),
      least: Number.NEGATIVE_INFINITY,
      most: chosen.length - 1,
    });
  }
  expect(seen.size * 24).toBe(576);
});

/** The column of an option: they are made bed by bed, year by year, in the order of the options. */
function columnOf({ options, years }: CourseInstance, bed: number, year: number, key: string): number {
  return (bed * years + year) * options.length + options.findIndex((option) => option.key === key);
}
