import {
  adviceWeight,
  type CourseBed,
  type CourseInstance,
  type CourseOption,
  type CoursePlan,
  isUnder,
  isWithin,
  openKey,
} from './instance';

/** What a plan costs, level by level: an earlier level always counts before a later one. All integers. */
export type CourseCost = {
  /** Ground that breaks a rule, each by its weight [weight × cm²]. */
  readonly rules: number;
  /** Wanted and not given, over all years [cm²]. */
  readonly shortfall: number;
  /** Ground out of the preferred order, against what should follow what, or other than what would rather stand there [cm²]. */
  readonly order: number;
  /** The largest year's ground whose turn it is, less the smallest's [cm²]; 0 where turns are not to be evened. */
  readonly turns: number;
  /** Ground that differs from what is on the board [cm²]. */
  readonly moves: number;
};

/** One thing that a plan costs, and where. */
export type CostLine =
  | {
      readonly level: 'rules';
      readonly bed: number;
      readonly year: number;
      readonly rule: string;
      readonly areaCm2: number;
      readonly weight: number;
    }
  | { readonly level: 'shortfall'; readonly option: string; readonly year: number; readonly areaCm2: number }
  | {
      readonly level: 'order' | 'moves';
      readonly bed: number;
      readonly year: number;
      /** The rule on what follows what that it goes against, if one does. */
      readonly rule: string | null;
      readonly areaCm2: number;
    };

/** The levels, the weightiest first. */
export const levels = ['rules', 'shortfall', 'order', 'turns', 'moves'] as const;
export type Level = (typeof levels)[number];

/**
 * What a plan costs, and why: the objective that the course planner minimises, told plainly.
 *
 * Method: each bed is walked year by year. Ground breaks a host group's or a trouble's break for what stood before the
 * plan, or on all of that break's ground for an earlier year of the plan; each rule broken counts by itself.
 *
 * @param plan     one row for each bed, one option for each year
 * @returns        the cost by level, integers ≥ 0, and the lines that the first three levels and the last are the sums of
 * @throws RangeError on a plan of another shape, or with an unknown option
 * @example        one bed of 10 m², onions two years running, a break of three weighing 4 → rules 400,000
 */
export function costOf(instance: CourseInstance, plan: CoursePlan): { cost: CourseCost; lines: readonly CostLine[] } {
  const options = new Map(instance.options.map((option) => [option.key, option]));
  const rows = instance.beds.map((bed, at) => rowOf(plan[at], bed, instance.years, options));
  const lines = [
    ...instance.beds.flatMap((bed, at) => bedLines(instance, bed, at, rows[at] ?? [])),
    ...shortfallLines(instance, rows),
  ];
  const sum = (level: CostLine['level']) =>
    lines.reduce(
      (total, line) => total + (line.level === level ? line.areaCm2 * (line.level === 'rules' ? line.weight : 1) : 0),
      0,
    );
  const turns = instance.evenTurns ? spread(turnsOf(instance, plan).map(({ areaCm2 }) => areaCm2)) : 0;
  const cost = { rules: sum('rules'), shortfall: sum('shortfall'), order: sum('order'), turns, moves: sum('moves') };
  return { cost, lines };
}

/** Whether one cost is better than another: the first level in which they differ decides. */
export function isBetter(a: CourseCost, b: CourseCost): boolean {
  const level = levels.find((one) => a[one] !== b[one]);
  return level !== undefined && a[level] < b[level];
}

/**
 * The ground whose turn for manure it is in each year of a plan.
 *
 * @returns  one row a year: the beds, by their place in the instance, and their ground [cm²]
 */
export function turnsOf(instance: CourseInstance, plan: CoursePlan): { beds: number[]; areaCm2: number }[] {
  const { years, beds, manuringIntervalYears: interval } = instance;
  const takes = new Set(instance.options.filter(({ takesManure }) => takesManure).map(({ key }) => key));
  const rows = Array.from({ length: years }, () => ({ beds: [] as number[], areaCm2: 0 }));
  for (const [at, bed] of beds.entries()) {
    let last = bed.manuredYearsAgo === null ? Number.NEGATIVE_INFINITY : -bed.manuredYearsAgo;
    for (const [year, row] of rows.entries()) {
      const key = plan[at]?.[year] ?? openKey;
      // Ground with nothing planned is due all the same.
      if (year - last < interval || !(takes.has(key) || key === openKey)) continue;
      last = year;
      row.beds.push(at);
      row.areaCm2 += bed.areaCm2;
    }
  }
  return rows;
}

function rowOf(
  row: readonly string[] | undefined,
  bed: CourseBed,
  years: number,
  options: ReadonlyMap<string, CourseOption>,
): CourseOption[] {
  if (row?.length !== years) throw new RangeError(`a plan has one option a year for bed ${bed.id}`);
  return row.map((key) => {
    const option = options.get(key);
    if (!option) throw new RangeError(`no such option: ${key}`);
    return option;
  });
}

function bedLines(instance: CourseInstance, bed: CourseBed, at: number, row: readonly CourseOption[]): CostLine[] {
  return row.flatMap((option, year): CostLine[] => {
    const before = year === 0 ? bed.before : (row[year - 1]?.key ?? null);
    return [
      ...breakLines(bed, at, row, year),
      ...bed.advice
        .filter((one) => one.year === year && one.option === option.key)
        .map(({ rule, areaCm2 }): CostLine => ({ level: 'rules', bed: at, year, rule, areaCm2, weight: adviceWeight })),
      ...instance.follows
        .filter((one) => one.option === option.key && !(before !== null && one.after.includes(before)))
        .map(({ rule }): CostLine => ({ level: 'order', bed: at, year, rule, areaCm2: bed.areaCm2 })),
      ...orderLines(instance, bed, at, option.key, before, year),
      ...(bed.board[year] != null && bed.board[year] !== option.key
        ? [{ level: 'moves' as const, bed: at, year, rule: null, areaCm2: bed.areaCm2 }]
        : []),
    ];
  });
}

function breakLines(bed: CourseBed, at: number, row: readonly CourseOption[], year: number): CostLine[] {
  return bed.breaks.flatMap((one): CostLine[] => {
    if (!isUnder(row[year] as CourseOption, one)) return [];
    const inPlan = row.some((earlier, then) => then < year && isWithin(one, then, year) && isUnder(earlier, one));
    const areaCm2 = inPlan ? one.areaCm2 : (one.historyCm2[year] ?? 0);
    return areaCm2 > 0 ? [{ level: 'rules', bed: at, year, rule: one.key, areaCm2, weight: one.weight }] : [];
  });
}

function orderLines(
  { order }: CourseInstance,
  bed: CourseBed,
  at: number,
  key: string,
  before: string | null,
  year: number,
): CostLine[] {
  const line: CostLine = { level: 'order', bed: at, year, rule: null, areaCm2: bed.areaCm2 };
  const place = before === null ? -1 : order.indexOf(before);
  const isOut = place >= 0 && order.length > 1 && key !== order[(place + 1) % order.length];
  const rather = bed.rather[year] ?? null;
  return [...(isOut ? [line] : []), ...(rather !== null && rather !== key ? [line] : [])];
}

function shortfallLines(instance: CourseInstance, rows: readonly (readonly CourseOption[])[]): CostLine[] {
  return instance.wanted.flatMap(({ option, areaCm2 }) =>
    Array.from({ length: instance.years }, (_, year): CostLine => {
      const given = instance.beds.reduce(
        (sum, bed, at) => sum + (rows[at]?.[year]?.key === option ? bed.areaCm2 : 0),
        0,
      );
      return { level: 'shortfall', option, year, areaCm2: Math.max(0, areaCm2 - given) };
    }).filter((line) => line.areaCm2 > 0),
  );
}

function spread(areas: readonly number[]): number {
  return areas.length ? Math.max(...areas) - Math.min(...areas) : 0;
}
