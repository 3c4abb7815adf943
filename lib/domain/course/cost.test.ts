import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { costOf, isBetter, turnsOf } from './cost';
import { checkInstance, type CourseBed, type CourseInstance } from './instance';

const keys = ['alliums', 'brassicas', 'legumes', 'open'];
const areaCm2 = 100_000;
const free = (years: number) => Array<string | null>(years).fill(null);

function bed(years: number, given: Partial<CourseBed> = {}): CourseBed {
  return {
    id: 'b',
    areaCm2,
    breaks: keys.slice(0, 3).map((key) => ({
      key,
      hosts: [key],
      breakYears: 3,
      weight: 4,
      areaCm2,
      historyCm2: Array<number>(years).fill(0),
    })),
    advice: [],
    before: null,
    manuredYearsAgo: null,
    fixed: free(years),
    rather: free(years),
    board: free(years),
    ...given,
  };
}

function instance(beds: readonly CourseBed[], years: number, given: Partial<CourseInstance> = {}): CourseInstance {
  return {
    years,
    beds,
    options: keys.map((key) => ({
      key,
      hosts: key === 'open' ? [] : [key],
      takesManure: key !== 'legumes' && key !== 'open',
    })),
    wanted: [],
    order: [],
    follows: [],
    manuringIntervalYears: 3,
    evenTurns: false,
    ...given,
  };
}

const costs = (one: CourseInstance, ...plan: string[][]) => costOf(one, plan).cost;

describe('what a plan costs', () => {
  it('is nothing where every break is kept and nothing is wanted', () => {
    expect(costs(instance([bed(4)], 4), ['alliums', 'brassicas', 'legumes', 'open'])).toEqual({
      rules: 0,
      shortfall: 0,
      order: 0,
      turns: 0,
      moves: 0,
    });
  });

  it('is the whole bed by its weight for a break within the plan: 0 and 3 fall short of three clear years, 0 and 4 do not', () => {
    expect(costs(instance([bed(4)], 4), ['alliums', 'open', 'open', 'alliums']).rules).toBe(4 * areaCm2);
    expect(costs(instance([bed(5)], 5), ['alliums', 'open', 'open', 'open', 'alliums']).rules).toBe(0);
  });

  it('is the part that history makes short, and no more of it twice', () => {
    const [one] = bed(2).breaks;
    const breaks = one ? [{ ...one, historyCm2: [30_000, 20_000] }] : [];
    expect(costs(instance([bed(2, { breaks })], 2), ['alliums', 'open']).rules).toBe(4 * 30_000);
    expect(costs(instance([bed(2, { breaks })], 2), ['alliums', 'alliums']).rules).toBe(4 * (30_000 + areaCm2));
  });

  it('counts a trouble that crosses families, and one that no break clears', () => {
    const trouble = {
      key: 't',
      hosts: ['alliums', 'legumes'],
      breakYears: null,
      weight: 10,
      areaCm2: 5000,
      historyCm2: [0, 0, 0, 0, 0, 0],
    };
    const years = instance([bed(6, { breaks: [trouble] })], 6);
    expect(costs(years, ['alliums', 'open', 'open', 'open', 'open', 'legumes']).rules).toBe(10 * 5000);
    expect(costs(years, ['alliums', 'open', 'brassicas', 'open', 'open', 'open']).rules).toBe(0);
  });

  it('lacks what is wanted, year by year', () => {
    const two = instance([bed(2), bed(2)], 2, { wanted: [{ option: 'alliums', areaCm2: 150_000 }] });
    expect(costs(two, ['alliums', 'open'], ['alliums', 'alliums']).shortfall).toBe(0 + 50_000);
  });

  it('counts the order, what should follow what, preferences and the board by the bed', () => {
    const given = {
      order: ['legumes', 'brassicas', 'alliums'],
      follows: [{ rule: 'after', option: 'brassicas', after: ['legumes'] }],
    };
    const one = instance(
      [bed(2, { before: 'alliums', rather: ['legumes', null], board: ['open', 'alliums'] })],
      2,
      given,
    );
    expect(costs(one, ['legumes', 'brassicas'])).toMatchObject({ order: 0, moves: 2 * areaCm2 });
    expect(costs(one, ['brassicas', 'alliums'])).toMatchObject({ order: 3 * areaCm2, moves: areaCm2 });
  });

  it('puts an earlier level before everything after it', () => {
    const none = { rules: 0, shortfall: 0, order: 0, turns: 0, moves: 0 };
    expect(isBetter({ ...none, moves: 9e9 }, { ...none, rules: 1 })).toBe(true);
    expect(isBetter(none, none)).toBe(false);
  });

  it('is the same whatever the order of the beds', () => {
    const row = fc.array(fc.constantFrom(...keys), { minLength: 3, maxLength: 3 });
    const beds = fc.array(
      fc.record({ row, area: fc.integer({ min: 1, max: 90_000 }), before: fc.constantFrom(...keys, null) }),
      { minLength: 1, maxLength: 5 },
    );
    fc.assert(
      fc.property(beds, fc.boolean(), (drawn, evenTurns) => {
        const made = drawn.map(({ area, before, row: plan }) => ({
          plan,
          one: bed(3, { areaCm2: area, before, breaks: bed(3).breaks.map((each) => ({ ...each, areaCm2: area })) }),
        }));
        const asked = (list: typeof made) =>
          costOf(
            instance(
              list.map(({ one }) => one),
              3,
              { evenTurns, order: keys.slice(0, 3), wanted: [{ option: 'legumes', areaCm2: 70_000 }] },
            ),
            list.map(({ plan }) => plan),
          ).cost;
        expect(asked(made.toReversed())).toEqual(asked(made));
      }),
    );
  });
});

describe('turns', () => {
  it('come when the interval is over and the crop takes manure, or nothing is planned', () => {
    const one = instance([bed(6, { manuredYearsAgo: 1 })], 6);
    const due = turnsOf(one, [['alliums', 'alliums', 'legumes', 'open', 'brassicas', 'alliums']]);
    expect(due.map(({ areaCm2: cm2 }) => cm2)).toEqual([0, 0, 0, areaCm2, 0, 0]);
  });
});

describe('an instance', () => {
  it('is refused where it makes no sense', () => {
    expect(() => checkInstance(instance([bed(2)], 7))).toThrow(RangeError);
    expect(() => checkInstance(instance([bed(3)], 2))).toThrow(RangeError);
    expect(() => checkInstance(instance([bed(2)], 2, { order: ['moss'] }))).toThrow(RangeError);
    expect(() => costOf(instance([bed(2)], 2), [['moss', 'open']])).toThrow(RangeError);
    expect(() => costOf(instance([bed(2)], 2), [['open']])).toThrow(RangeError);
  });
});
