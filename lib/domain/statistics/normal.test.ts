import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { evenSpread } from './even-spread';
import { gammaQuantile } from './gamma-quantile';
import { normalCdf } from './normal-cdf';
import { normalQuantile } from './normal-quantile';

const share = fc.double({ min: 1e-4, max: 1 - 1e-4, noNaN: true });

describe('the normal distribution', () => {
  // Printed in every table of it.
  it.each([
    [0.5, 0],
    [0.8, 0.841621],
    [0.9, 1.281552],
    [0.95, 1.644854],
    [0.975, 1.959964],
    [0.995, 2.575829],
    [0.9995, 3.290527],
    [0.025, -1.959964],
  ])('has %d below %d', (below, z) => {
    expect(normalQuantile(below)).toBeCloseTo(z, 5);
    expect(normalCdf(z)).toBeCloseTo(below, 6);
  });

  it('is read both ways alike', () => {
    fc.assert(
      fc.property(share, (below) => {
        expect(normalCdf(normalQuantile(below))).toBeCloseTo(below, 6);
      }),
    );
  });

  it('agrees with adding up its density', () => {
    const step = 1e-3;
    let sum = 0.5;
    for (let at = 0; at < 2000; at++)
      sum += (step * Math.exp(-(((at + 0.5) * step) ** 2) / 2)) / Math.sqrt(2 * Math.PI);
    expect(normalCdf(2)).toBeCloseTo(sum, 6);
  });

  it.each([0, 1, -0.1, 1.1, Number.NaN])('has no value for a share of %d', (below) =>
    expect(() => normalQuantile(below)).toThrow(RangeError),
  );

  it('has no share below what is no number', () => {
    expect(() => normalCdf(Number.NaN)).toThrow(RangeError);
    expect(() => normalCdf(Number.POSITIVE_INFINITY)).toThrow(RangeError);
  });
});

describe('the gamma distribution', () => {
  // A chi-square of n degrees is gamma of shape n/2 and rate 1/2: its printed percentage points.
  it.each([
    [0.9, 10, 15.987],
    [0.1, 10, 4.865],
    [0.5, 10, 9.342],
    [0.9, 20, 28.412],
    [0.1, 20, 12.443],
    [0.95, 20, 31.41],
  ])('%d of a chi-square of %i degrees below %d', (below, degrees, point) => {
    const found = gammaQuantile(below, degrees / 2, 0.5);
    expect(Math.abs(found / point - 1)).toBeLessThan(0.005);
  });

  it('rises with the share, and is never below nothing', () => {
    fc.assert(
      fc.property(share, share, fc.double({ min: 0.5, max: 500, noNaN: true }), (one, other, shape) => {
        const [low, high] = [Math.min(one, other), Math.max(one, other)].map((at) => gammaQuantile(at, shape, 3));
        expect(low).toBeGreaterThanOrEqual(0);
        expect(high).toBeGreaterThanOrEqual(low ?? 0);
      }),
    );
  });

  it('wants a shape and a rate', () => {
    expect(() => gammaQuantile(0.5, 0, 1)).toThrow(RangeError);
    expect(() => gammaQuantile(0.5, 1, -1)).toThrow(RangeError);
  });
});

describe('points spread evenly', () => {
  it('are as many as asked, the first coordinate in equal steps', () => {
    expect(evenSpread(2, 1)).toEqual([[0.25], [0.75]]);
    expect(evenSpread(4, 3).map(([first]) => first)).toEqual([0.125, 0.375, 0.625, 0.875]);
  });

  it('leave no part of any two coordinates bare, up to twenty of them', () => {
    const points = evenSpread(400, 20);
    for (let one = 0; one < 20; one++)
      for (let other = 0; other < one; other++)
        for (const quarter of [0, 1, 2, 3].flatMap((low) => [0, 1, 2, 3].map((left) => [low / 4, left / 4] as const))) {
          const inside = points.filter((point) =>
            [point[one], point[other]].every((at, which) => {
              const from = quarter[which] ?? 0;
              return at !== undefined && at > from && at <= from + 0.25;
            }),
          );
          expect([one, other, inside.length > 0]).toEqual([one, other, true]);
        }
  });

  it('stay within the cube', () => {
    for (const point of evenSpread(1000, 20)) for (const at of point) expect(at > 0 && at < 1).toBe(true);
  });

  it.each([
    [0, 1],
    [1, 0],
    [1.5, 1],
  ])('are none for %d points of %d dimensions', (count, dimensions) =>
    expect(() => evenSpread(count, dimensions)).toThrow(RangeError),
  );
});
