import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceFrom } from '@/tests/fixtures/chance';
import { incompleteBeta } from './incomplete-beta';
import { meanInterval, pairedInterval, welchInterval } from './intervals';
import { logGamma } from './log-gamma';
import { momentsOf, standardDeviationOf } from './moments';
import { normalCdf } from './normal-cdf';
import { studentCdf, studentQuantile } from './student-t';

const value = fc.double({ min: -1e4, max: 1e4, noNaN: true });

describe('mean and variance', () => {
  it('are of one value the value, and nothing', () => {
    expect(momentsOf([3])).toEqual({ count: 1, mean: 3, variance: null });
    expect(standardDeviationOf([3])).toBeNull();
    expect(standardDeviationOf([2, 4])).toBeCloseTo(Math.SQRT2, 14);
  });

  it('move with the values, and don’t change them', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -999, max: 999 }), { minLength: 2 }), fc.integer(), (list, by) => {
        const frozen = Object.freeze([...list]);
        const [plain, moved] = [momentsOf(frozen), momentsOf(frozen.map((one) => one + by))];
        expect(moved.mean - by).toBeCloseTo(plain.mean, 4);
        expect(moved.variance).toBeCloseTo(plain.variance ?? Number.NaN, 4);
      }),
    );
  });

  it('agree with all differences between two values, squared', () => {
    fc.assert(
      fc.property(fc.array(value, { minLength: 2, maxLength: 20 }), (list) => {
        const squares = list.flatMap((one) => list.map((other) => (one - other) ** 2));
        const slow = squares.reduce((sum, one) => sum + one, 0) / (2 * list.length * (list.length - 1));
        expect(Math.abs((momentsOf(list).variance ?? 0) - slow)).toBeLessThanOrEqual(1e-9 * Math.max(1, slow));
      }),
    );
  });

  it('are not of nothing, nor of what is no number', () => {
    for (const list of [[], [Number.NaN], [1, Number.POSITIVE_INFINITY]])
      expect(() => momentsOf(list)).toThrow(RangeError);
  });
});

describe('the gamma function', () => {
  it('is the factorial, and √π at a half', () => {
    let factorial = 1;
    for (let n = 1; n <= 20; n++) {
      expect(logGamma(n)).toBeCloseTo(Math.log(factorial), 12);
      factorial *= n;
    }
    expect(logGamma(0.5)).toBeCloseTo(Math.log(Math.PI) / 2, 13);
  });

  it('goes up by the logarithm of its argument', () =>
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e4, noNaN: true }), (x) => {
        expect(Math.abs(logGamma(x + 1) - logGamma(x) - Math.log(x))).toBeLessThan(1e-9);
      }),
    ));

  it.each([0, -1, Number.NaN])('has no logarithm at %d', (x) => expect(() => logGamma(x)).toThrow(RangeError));
});

describe('the incomplete beta function', () => {
  it('is a polynomial where its parameters are whole', () => {
    for (const x of [0, 0.1, 0.37, 0.5, 0.9, 1]) {
      expect(incompleteBeta(x, 1, 1)).toBeCloseTo(x, 13);
      expect(incompleteBeta(x, 2, 2)).toBeCloseTo(x * x * (3 - 2 * x), 13);
      expect(incompleteBeta(x, 3, 1)).toBeCloseTo(x ** 3, 13);
    }
  });

  it('is one less itself from the other end', () =>
    fc.assert(
      fc.property(
        // Nearer to nothing one less it has no digits left.
        fc.double({ min: 1e-3, max: 1 - 1e-3, noNaN: true }),
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        fc.double({ min: 0.1, max: 500, noNaN: true }),
        (x, a, b) => {
          expect(incompleteBeta(x, a, b) + incompleteBeta(1 - x, b, a)).toBeCloseTo(1, 9);
        },
      ),
    ));

  it('refuses what is no share, and parameters of nothing', () => {
    expect(() => incompleteBeta(1.1, 1, 1)).toThrow(RangeError);
    expect(() => incompleteBeta(0.5, 0, 1)).toThrow(RangeError);
  });
});

describe('Student’s t', () => {
  // Closed forms: one degree is Cauchy's, two and four are algebraic.
  it('has its closed forms', () => {
    for (const t of [-8, -1.5, -0.2, 0, 0.7, 3, 20]) {
      expect(studentCdf(t, 1)).toBeCloseTo(0.5 + Math.atan(t) / Math.PI, 13);
      expect(studentCdf(t, 2)).toBeCloseTo(0.5 + t / (2 * Math.sqrt(2 + t * t)), 13);
    }
    expect(studentQuantile(0.975, 1)).toBeCloseTo(Math.tan(0.475 * Math.PI), 9);
    expect(studentQuantile(0.9, 2)).toBeCloseTo(0.8 * Math.sqrt(2 / (1 - 0.64)), 10);
  });

  it('is normal in the end', () => {
    for (const t of [-2, -0.5, 1, 2.5]) expect(studentCdf(t, 1e7)).toBeCloseTo(normalCdf(t), 5);
  });

  it('is read both ways alike', () =>
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 1 - 1e-6, noNaN: true }),
        fc.double({ min: 0.6, max: 300, noNaN: true }),
        (share, degrees) => {
          const t = studentQuantile(share, degrees);
          expect(Math.abs(studentCdf(t, degrees) - share)).toBeLessThan(1e-10);
          expect(studentQuantile(1 - share, degrees)).toBeCloseTo(-t, Math.abs(t) > 1e3 ? -2 : 4);
        },
      ),
    ));

  it('wants a share and degrees', () => {
    expect(() => studentQuantile(0, 3)).toThrow(RangeError);
    expect(() => studentQuantile(0.9, 0.1)).toThrow(RangeError);
    expect(() => studentCdf(Number.NaN, 3)).toThrow(RangeError);
    expect(() => studentCdf(1, 0)).toThrow(RangeError);
  });
});

describe('intervals', () => {
  it('are as worked out by hand', () => {
    const close = (found: { low: number; high: number; degrees: number } | null, low: number, high: number) => {
      expect(found?.low).toBeCloseTo(low, 3);
      expect(found?.high).toBeCloseTo(high, 3);
    };
    close(meanInterval([1, 2, 3, 4], 0.95), 0.4457, 4.5543);
    close(welchInterval([3, 4, 5], [1, 2, 3], 0.95), -0.2671, 4.2671);
    close(
      pairedInterval(
        [
          [3, 1],
          [5, 2],
          [4, 3],
        ],
        0.95,
      ),
      -0.4841,
      4.4841,
    );
    expect(meanInterval([7], 0.95)).toBeNull();
  });

  it('have as many degrees of freedom as the groups allow', () =>
    fc.assert(
      fc.property(
        fc.array(value, { minLength: 2, maxLength: 9 }),
        fc.array(value, { minLength: 2, maxLength: 9 }),
        (a, b) => {
          fc.pre((momentsOf(a).variance ?? 0) > 1e-9 && (momentsOf(b).variance ?? 0) > 1e-9);
          const { degrees } = welchInterval(a, b, 0.9);
          expect(degrees).toBeGreaterThanOrEqual(Math.min(a.length, b.length) - 1 - 1e-9);
          expect(degrees).toBeLessThanOrEqual(a.length + b.length - 2 + 1e-9);
        },
      ),
    ));

  it('are not of what never differs, of too few, or at no level', () => {
    expect(() => welchInterval([2, 2], [3, 3], 0.95)).toThrow(RangeError);
    expect(() => welchInterval([2], [3, 4], 0.95)).toThrow(RangeError);
    expect(() =>
      pairedInterval(
        [
          [1, 2],
          [3, 4],
        ],
        0.95,
      ),
    ).toThrow(RangeError);
    expect(() => meanInterval([1, 2], 1)).toThrow(RangeError);
  });

  // Few results, of groups that spread unlike: as beds give them.
  it.each([
    [4, 1, 5, 1],
    [5, 1, 5, 3],
    [6, 2, 4, 1],
    [8, 1, 12, 2],
  ])('of Welch, %i spread %d and %i spread %d, hold the truth 93 to 97 times of 100', (n, spread, m, other) => {
    const { normal } = chanceFrom(n * 1000 + m);
    const runs = 2_000;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const ones = Array.from({ length: n }, () => 3 + spread * normal());
      const others = Array.from({ length: m }, () => 2 + other * normal());
      const { low, high } = welchInterval(ones, others, 0.95);
      if (low <= 1 && 1 <= high) held += 1;
    }
    expect(held / runs).toBeGreaterThanOrEqual(0.93);
    expect(held / runs).toBeLessThanOrEqual(0.97);
  });

  it('of pairs hold the truth 93 to 97 times of 100, however the plots differ', () => {
    const { normal } = chanceFrom(1947);
    const runs = 2_000;
    let held = 0;
    for (let run = 0; run < runs; run++) {
      const pairs = Array.from({ length: 4 }, (): [number, number] => {
        const plot = 5 * normal();
        return [plot + 1 + normal(), plot + normal()];
      });
      const { low, high } = pairedInterval(pairs, 0.95);
      if (low <= 1 && 1 <= high) held += 1;
    }
    expect(held / runs).toBeGreaterThanOrEqual(0.93);
    expect(held / runs).toBeLessThanOrEqual(0.97);
  });
});
