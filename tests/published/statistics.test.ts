import { describe, expect, it, test } from 'vitest';
import { meanInterval, pairedInterval, welchInterval } from '@/lib/domain/statistics/intervals';
import { momentsOf, standardDeviationOf } from '@/lib/domain/statistics/moments';
import { shrinkCells } from '@/lib/domain/statistics/shrink-means';
import { studentCdf, studentQuantile } from '@/lib/domain/statistics/student-t';

/** How many leading digits agree with what is certified. */
function digits(found: number | null | undefined, certified: number): number {
  if (found === null || found === undefined) return 0;
  return found === certified ? 16 : -Math.log10(Math.abs(found - certified) / Math.abs(certified));
}

const constructed = (first: number, ...pair: readonly [number, number]) => [
  first,
  ...Array.from({ length: 500 }, () => pair).flat(),
];
// biome-ignore format: as printed
const michelso = [
  299.85, 299.74, 299.9, 300.07, 299.93, 299.85, 299.95, 299.98, 299.98, 299.88, 300, 299.98, 299.93, 299.65, 299.76, 299.81, 300, 300, 299.96, 299.96,
  299.96, 299.94, 299.96, 299.94, 299.88, 299.8, 299.85, 299.88, 299.9, 299.84, 299.83, 299.79, 299.81, 299.88, 299.88, 299.83, 299.8, 299.79, 299.76, 299.8,
  299.88, 299.88, 299.88, 299.86, 299.72, 299.72, 299.62, 299.86, 299.97, 299.95, 299.88, 299.91, 299.85, 299.87, 299.84, 299.84, 299.85, 299.84, 299.84, 299.84,
  299.89, 299.81, 299.81, 299.82, 299.8, 299.77, 299.76, 299.74, 299.75, 299.76, 299.91, 299.92, 299.89, 299.86, 299.88, 299.72, 299.84, 299.85, 299.85, 299.78,
  299.89, 299.84, 299.78, 299.81, 299.76, 299.81, 299.79, 299.81, 299.82, 299.85, 299.87, 299.87, 299.81, 299.74, 299.81, 299.94, 299.95, 299.8, 299.81, 299.87,
];
// biome-ignore format: as printed
const mavro = [
  2.0018, 2.0017, 2.0018, 2.0019, 2.0018, 2.0017, 2.0015, 2.0014, 2.0015, 2.0015, 2.0017, 2.0018, 2.0018, 2.0019, 2.0019, 2.0021, 2.002, 2.0016, 2.0014, 2.0013,
  2.0013, 2.0015, 2.0015, 2.0016, 2.0015, 2.0014, 2.0013, 2.0014, 2.0015, 2.0014, 2.0015, 2.0016, 2.0015, 2.0016, 2.0019, 2.002, 2.002, 2.0021, 2.0022, 2.0023,
  2.0024, 2.0025, 2.0027, 2.0026, 2.0026, 2.0026, 2.0027, 2.0026, 2.0025, 2.0024,
];

// National Institute of Standards and Technology, Statistical Reference Datasets, univariate summary statistics, undated, as copied: certified means and
// standard deviations. The last two carry seven and eight digits that say nothing.
// biome-ignore format: one data set a line
describe.each([
  ['Mavro', mavro, 50, 2.001856, 0.000429123454003053, 12],
  ['Michelso', michelso, 100, 299.8524, 0.0790105478190518, 12],
  ['NumAcc1', [10_000_001, 10_000_003, 10_000_002], 3, 10_000_002, 1, 15],
  ['NumAcc2', constructed(1.2, 1.1, 1.3), 1001, 1.2, 0.1, 14],
  ['NumAcc3', constructed(1_000_000.2, 1_000_000.1, 1_000_000.3), 1001, 1_000_000.2, 0.1, 9],
  ['NumAcc4', constructed(10_000_000.2, 10_000_000.1, 10_000_000.3), 1001, 10_000_000.2, 0.1, 8],
] as const)('the certified set %s', (_, values, count, mean, deviation, enough) => {
  it('has its mean, to fifteen digits', () => {
    expect(values.length).toBe(count);
    expect(digits(momentsOf(values).mean, mean)).toBeGreaterThan(14.9);
  });

  it(`has its standard deviation, to ${enough} digits`, () =>
    expect(digits(standardDeviationOf(values), deviation)).toBeGreaterThan(enough - 0.1));
});

// National Institute of Standards and Technology, Statistical Reference Datasets, analysis of variance, AtmWtAg, undated, as copied, after Powell, Murphy and Gramlich,
// NBS Journal of Research 87, 1982: F 15.9467335677930, squares between 3.63834187500000E-09 (1), within 1.04951729166667E-08 (46).
describe('the atomic weight of silver by two instruments', () => {
  // biome-ignore format: as printed
  const [one, other] = [
    [107.8681568, 107.8681465, 107.8681572, 107.8681785, 107.8681446, 107.8681903, 107.8681526, 107.8681494, 107.8681616, 107.8681587, 107.8681519, 107.8681486,
      107.8681419, 107.8681569, 107.8681508, 107.8681672, 107.8681385, 107.8681518, 107.8681662, 107.8681424, 107.868136, 107.8681333, 107.868161, 107.8681477],
    [107.8681079, 107.8681344, 107.8681513, 107.8681197, 107.8681604, 107.8681385, 107.8681642, 107.8681365, 107.8681151, 107.8681082, 107.8681517, 107.8681448,
      107.8681198, 107.8681482, 107.8681334, 107.8681609, 107.8681101, 107.8681512, 107.8681469, 107.868136, 107.8681254, 107.8681261, 107.868145, 107.8681368],
  ];
  const within = 23 * ((momentsOf(one).variance ?? 0) + (momentsOf(other).variance ?? 0));
  const difference = momentsOf(one).mean - momentsOf(other).mean;

  test('squares within, and between', () => {
    expect(digits(within, 1.04951729166667e-8)).toBeGreaterThan(8);
    expect(digits(12 * difference ** 2, 3.638341875e-9)).toBeGreaterThan(8);
  });

  // With equal counts Welch's t is the square root of F; its degrees were worked out once more beside the certified figures: 43.2518.
  test('Welch’s interval at the level where it just reaches nothing', () => {
    const t = Math.sqrt(15.946733567793);
    const level = 2 * studentCdf(t, 43.2518) - 1;
    const { estimate, low, degrees } = welchInterval(one, other, level);
    expect(degrees).toBeCloseTo(43.2518, 3);
    expect(Math.abs(low) / estimate).toBeLessThan(1e-6);
    expect(1 - level).toBeCloseTo(0.00024856, 7);
  });
});

// Student (W. S. Gosset), Biometrika 6, 1908, after Cushny and Peebles, 1905: hours of sleep gained by two drugs, ten patients.
describe('the sleep of ten patients', () => {
  const first = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0, 2];
  const second = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4];

  // As every text on the R language prints it: t −1.8608, df 17.776, p 0.07939, from −3.3654832 to 0.2054832.
  test('as two groups, by Welch', () => {
    const { estimate, low, high, degrees } = welchInterval(first, second, 0.95);
    expect(momentsOf(first).mean).toBeCloseTo(0.75, 12);
    expect(momentsOf(second).mean).toBeCloseTo(2.33, 12);
    expect(low).toBeCloseTo(-3.3654832, 7);
    expect(high).toBeCloseTo(0.2054832, 7);
    expect(degrees).toBeCloseTo(17.776, 3);
    const t = estimate / ((high - low) / 2 / studentQuantile(0.975, degrees));
    expect(t).toBeCloseTo(-1.8608, 4);
    expect(2 * studentCdf(t, degrees)).toBeCloseTo(0.07939, 5);
  });

  // The same patients had both: t −4.0621, df 9, p 0.002833, from −2.4599 to −0.7001.
  test('as pairs', () => {
    const pairs = first.map((value, at): [number, number] => [value, second[at] ?? 0]);
    const { estimate, low, high, degrees } = pairedInterval(pairs, 0.95);
    expect([low, high].map((end) => Number(end.toFixed(4)))).toEqual([-2.4599, -0.7001]);
    const t = estimate / ((high - low) / 2 / studentQuantile(0.975, degrees));
    expect(t).toBeCloseTo(-4.0621, 4);
    expect(2 * studentCdf(t, degrees)).toBeCloseTo(0.002833, 6);
    expect(
      meanInterval(
        pairs.map(([one, other]) => one - other),
        0.95,
      ),
    ).toMatchObject({ low, high });
  });
});

// B. Efron and C. Morris, Stein's Paradox in Statistics, Scientific American 236(5), 1977: eighteen batters after 45 times at bat. Grand mean .265, of
// which .788 and of the own average .212: .400 becomes .294, .156 becomes .242.
test('eighteen batters are drawn towards their mean', () => {
  const hits = [18, 17, 16, 15, 14, 14, 13, 12, 11, 11, 10, 10, 10, 10, 10, 9, 8, 7];
  const averages = hits.map((hit) => hit / 45);
  const { mean } = momentsOf(averages);
  const errorSquare = (mean * (1 - mean)) / 45;
  const { towards, cells } = shrinkCells(
    averages.map((average) => ({ mean: average, errorSquare })),
    null,
  );
  expect(towards).toBeCloseTo(0.265, 3);
  expect(cells[0]?.ownShare).toBeCloseTo(0.212, 3);
  expect(cells[0]?.estimate).toBeCloseTo(0.294, 3);
  expect(cells.at(-1)?.estimate).toBeCloseTo(0.242, 3);
});
