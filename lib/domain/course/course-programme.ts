import { type Draft, draftProgramme, type Programme, type Row, type Term, withRows } from '../programme/programme';
import type { Level } from './cost';
import {
  adviceWeight,
  checkInstance,
  type CourseBed,
  type CourseBreak,
  type CourseInstance,
  type CourseOption,
  type CoursePlan,
  isUnder,
  isWithin,
  openKey,
} from './instance';

/** A course as an integer programme, with the terms of each level of its cost [m², so that the numbers stay small]. */
export type CourseProgramme = {
  readonly programme: Programme;
  readonly objectives: Readonly<Record<Level, readonly Term[]>>;
  /** The plan that a solution's values stand for. */
  readonly planOf: (values: readonly number[]) => CoursePlan;
  /** The row that holds a level at a value that was reached [weight × cm², or cm²]. */
  readonly hold: (level: Level, value: number) => Row;
};

const cm2PerM2 = 10_000;

type Drafting = {
  readonly draft: Draft;
  readonly instance: CourseInstance;
  /** The column that says: this option stands on this bed in this year. */
  readonly stands: (bed: number, year: number, option: string) => number;
  readonly terms: Record<Level, Term[]>;
};

/**
 * Write a course down as an integer programme whose levels are those of `costOf`, exactly.
 *
 * Method: one whole column for each bed, year and option, of which one is 1. A break is broken where two years within it
 * are both under it: a column v ≥ x + x′ − 1 for each such pair, which is exact; and over each window of one break's length
 * the hosts less those columns are at most 1, which is implied for whole values and makes the relaxation tight.
 *
 * @throws RangeError as `checkInstance`
 * @source Klein Haneveld and Stegeman, European Journal of Operational Research 166 (2005): succession as linear
 *         constraints; the windows: clique inequalities, from memory
 */
export function courseProgramme(instance: CourseInstance): CourseProgramme {
  checkInstance(instance);
  const draft = draftProgramme();
  const columns = instance.beds.map((bed) =>
    Array.from({ length: instance.years }, (_, year) => choiceColumns(draft, instance, bed, year)),
  );
  const stands = (bed: number, year: number, option: string) => columns[bed]?.[year]?.get(option) ?? -1;
  const terms: Record<Level, Term[]> = { rules: [], shortfall: [], order: [], turns: [], moves: [] };
  const drafting: Drafting = { draft, instance, stands, terms };
  for (const [at, bed] of instance.beds.entries()) {
    for (const one of bed.breaks) draftBreak(drafting, at, one);
    draftAdvice(drafting, at, bed);
    draftOrder(drafting, at, bed);
  }
  draftWanted(drafting);
  if (instance.evenTurns) draftTurns(drafting);
  const keys = instance.options.map(({ key }) => key);
  return {
    programme: draft.done(),
    objectives: terms,
    planOf: (values) =>
      columns.map((years) =>
        years.map((choices) => keys.find((key) => (values[choices.get(key) ?? -1] ?? 0) > 0.5) ?? openKey),
      ),
    // All costs are whole square centimetres, so that half of one more parts this value from the next.
    hold: (level, value) => ({ terms: terms[level], least: Number.NEGATIVE_INFINITY, most: (value + 0.5) / cm2PerM2 }),
  };
}

/**
 * The same question with nothing bent: whether a plan keeps every rule, and gives all of the wishes named.
 *
 * @param wishes  areas wanted, and what is fixed; the others are let go
 * @returns       a programme that has a solution exactly when they can all be met together
 */
export function strictProgramme(instance: CourseInstance, wishes: readonly CourseWish[]): Programme {
  const fixed = new Map(
    wishes.flatMap((wish) => (wish.kind === 'fixed' ? [[`${wish.bed} ${wish.year}`, wish.option]] : [])),
  );
  const wanted = wishes.flatMap((wish) => (wish.kind === 'wanted' ? [wish] : []));
  const beds = instance.beds.map((bed, at) => ({
    ...bed,
    fixed: bed.fixed.map((_, year) => fixed.get(`${at} ${year}`) ?? null),
  }));
  const { programme, objectives } = courseProgramme({
    ...instance,
    beds,
    wanted,
    follows: [],
    order: [],
    evenTurns: false,
  });
  const none = (level: Level): Row => ({
    terms: objectives[level],
    least: Number.NEGATIVE_INFINITY,
    most: 0.5 / cm2PerM2,
  });
  // Advice is no wish: it is not in the rules here.
  return withRows(programme, [none('rules'), none('shortfall')]);
}

/** Something a holder asked for that may turn out impossible beside the rest. */
export type CourseWish =
  | { readonly kind: 'wanted'; readonly option: string; readonly areaCm2: number }
  | { readonly kind: 'fixed'; readonly bed: number; readonly year: number; readonly option: string };

/** The wishes of an instance: each area wanted, and each entry that is fixed. */
export function wishesOf({ wanted, beds }: CourseInstance): CourseWish[] {
  return [
    ...wanted.filter(({ areaCm2 }) => areaCm2 > 0).map((one): CourseWish => ({ kind: 'wanted', ...one })),
    ...beds.flatMap(({ fixed }, bed) =>
      fixed.flatMap((option, year): CourseWish[] =>
        option === null || option === openKey ? [] : [{ kind: 'fixed', bed, year, option }],
      ),
    ),
  ];
}

function choiceColumns(draft: Draft, { options }: CourseInstance, bed: CourseBed, year: number): Map<string, number> {
  const must = bed.fixed[year] ?? null;
  const columns = new Map(
    options.map(({ key }) => [key, draft.column(must === key ? 1 : 0, must === null || must === key ? 1 : 0, true)]),
  );
  draft.row(
    [...columns.values()].map((column): Term => [column, 1]),
    1,
    1,
  );
  return columns;
}

function draftBreak({ draft, instance, stands, terms }: Drafting, bed: number, one: CourseBreak): void {
  const under = instance.options.filter((option) => isUnder(option, one));
  if (under.length === 0) return;
  const hosts = (year: number, factor = 1): Term[] => under.map(({ key }) => [stands(bed, year, key), factor]);
  const broken: (number | null)[] = [];
  for (let year = 0; year < instance.years; year++) {
    const before = one.historyCm2[year] ?? 0;
    terms.rules.push(...hosts(year, (before * one.weight) / cm2PerM2));
    const more = one.areaCm2 - before;
    const column = more > 0 ? draft.column(0, 1) : null;
    broken.push(column);
    if (column === null) continue;
    terms.rules.push([column, (more * one.weight) / cm2PerM2]);
    for (let earlier = 0; earlier < year; earlier++)
      if (isWithin(one, earlier, year))
        draft.row([[column, 1], ...hosts(year, -1), ...hosts(earlier, -1)], -1, Number.POSITIVE_INFINITY);
  }
  const reach = one.breakYears ?? instance.years;
  for (let from = 0; from < instance.years - 1; from++) {
    const window = Array.from({ length: Math.min(reach, instance.years - 1 - from) + 1 }, (_, at) => from + at);
    // A year whose ground is short already for its history costs nothing more, and so bounds nothing.
    const counted = window.filter((year) => year === from || broken[year] !== null);
    const loose = counted.slice(1).map((year): Term => [broken[year] as number, -1]);
    if (counted.length > 2)
      draft.row([...counted.flatMap((year) => hosts(year)), ...loose], Number.NEGATIVE_INFINITY, 1);
  }
}

function draftAdvice({ draft, instance, stands, terms }: Drafting, at: number, bed: CourseBed): void {
  for (const { year, option, areaCm2 } of bed.advice)
    terms.rules.push([stands(at, year, option), (areaCm2 * adviceWeight) / cm2PerM2]);
  for (const { option, after } of instance.follows)
    for (let year = 0; year < instance.years; year++) {
      const cost = bed.areaCm2 / cm2PerM2;
      if (year === 0) {
        if (!(bed.before !== null && after.includes(bed.before))) terms.order.push([stands(at, 0, option), cost]);
        continue;
      }
      const column = draft.column(0, 1);
      terms.order.push([column, cost]);
      const led = after.map((key): Term => [stands(at, year - 1, key), 1]);
      draft.row([[column, 1], [stands(at, year, option), -1], ...led], 0, Number.POSITIVE_INFINITY);
    }
}

function draftOrder({ draft, instance, stands, terms }: Drafting, at: number, bed: CourseBed): void {
  const { order, years } = instance;
  const cost = bed.areaCm2 / cm2PerM2;
  for (let year = 0; year < years; year++) {
    const rather = bed.rather[year] ?? null;
    if (rather !== null) terms.order.push(...otherThan(instance, stands, at, year, rather, cost));
    const board = bed.board[year] ?? null;
    if (board !== null) terms.moves.push(...otherThan(instance, stands, at, year, board, cost));
    if (order.length < 2) continue;
    for (const [place, key] of order.entries()) {
      const next = order[(place + 1) % order.length] ?? key;
      if (year === 0) {
        if (bed.before === key) terms.order.push(...otherThan(instance, stands, at, 0, next, cost));
        continue;
      }
      const column = draft.column(0, 1);
      terms.order.push([column, cost]);
      draft.row(
        [
          [column, 1],
          [stands(at, year - 1, key), -1],
          [stands(at, year, next), 1],
        ],
        0,
        Number.POSITIVE_INFINITY,
      );
    }
  }
}

function otherThan(
  { options }: { readonly options: readonly CourseOption[] },
  stands: Drafting['stands'],
  bed: number,
  year: number,
  key: string,
  cost: number,
): Term[] {
  return options.filter((option) => option.key !== key).map((option): Term => [stands(bed, year, option.key), cost]);
}

function draftWanted({ draft, instance, stands, terms }: Drafting): void {
  for (const { option, areaCm2 } of instance.wanted)
    for (let year = 0; year < instance.years; year++) {
      const lacking = draft.column(0, areaCm2 / cm2PerM2);
      terms.shortfall.push([lacking, 1]);
      const given = instance.beds.map((bed, at): Term => [stands(at, year, option), bed.areaCm2 / cm2PerM2]);
      draft.row([[lacking, 1], ...given], areaCm2 / cm2PerM2, Number.POSITIVE_INFINITY);
    }
}

// A bed is manured in a year when its turn has come and what stands there takes it, or nothing is planned.
function draftTurns({ draft, instance, stands, terms }: Drafting): void {
  const { years, manuringIntervalYears: interval, beds, options } = instance;
  const taking = options.filter(({ key, takesManure }) => takesManure || key === openKey).map(({ key }) => key);
  const perYear: Term[][] = Array.from({ length: years }, () => []);
  for (const [at, bed] of beds.entries()) {
    const manured = Array.from({ length: years }, () => draft.column(0, 1, true));
    for (let year = 0; year < years; year++) {
      const column = manured[year] as number;
      const takes = taking.map((key): Term => [stands(at, year, key), -1]);
      const lately = manured.slice(Math.max(0, year - interval + 1), year);
      const stillFed = bed.manuredYearsAgo !== null && year + bed.manuredYearsAgo < interval;
      perYear[year]?.push([column, bed.areaCm2 / cm2PerM2]);
      if (stillFed) {
        draft.row([[column, 1]], 0, 0);
        continue;
      }
      draft.row([[column, 1], ...takes], Number.NEGATIVE_INFINITY, 0);
      for (const earlier of lately)
        draft.row(
          [
            [column, 1],
            [earlier, 1],
          ],
          Number.NEGATIVE_INFINITY,
          1,
        );
      draft.row([[column, 1], ...takes, ...lately.map((one): Term => [one, 1])], 0, Number.POSITIVE_INFINITY);
    }
  }
  const all = beds.reduce((sum, bed) => sum + bed.areaCm2, 0) / cm2PerM2;
  const [most, least] = [draft.column(0, all), draft.column(0, all)];
  for (const row of perYear) {
    draft.row([[most, 1], ...row.map(([column, area]): Term => [column, -area])], 0, Number.POSITIVE_INFINITY);
    draft.row([[least, -1], ...row], 0, Number.POSITIVE_INFINITY);
  }
  terms.turns.push([most, 1], [least, -1]);
}
