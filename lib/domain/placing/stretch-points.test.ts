import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { pathLengthCm, stretchPoints } from './stretch-points';

const at = (xCm: number, yCm: number) => ({ xCm, yCm });
const bend = [at(0, 0), at(500, 0), at(500, 800)];

test('the length of a path', () => {
  expect(pathLengthCm(bend)).toBe(1300);
  expect(pathLengthCm([at(0, 0), at(300, 400)])).toBe(500);
  expect([pathLengthCm([]), pathLengthCm([at(1, 1)])]).toEqual([0, 0]);
});

describe('a stretch of it', () => {
  test.each([
    [200, 700, [at(200, 0), at(500, 0), at(500, 200)]],
    [0, 1300, bend],
    [0, 99_999, bend],
    [600, 700, [at(500, 100), at(500, 200)]],
    [100, 500, [at(100, 0), at(500, 0)]],
    [1300, 1400, []],
    [300, 300, []],
  ])('from %d to %d', (fromCm, toCm, part) => expect(stretchPoints(bend, { fromCm, toCm })).toEqual(part));
  test('a point drawn twice adds nothing', () =>
    expect(stretchPoints([at(0, 0), at(0, 0), at(90, 0)], { fromCm: 30, toCm: 60 })).toEqual([at(30, 0), at(60, 0)]));
  test('is as long as it says, along straight lines of the site', () => {
    const straight = fc.array(fc.integer({ min: 1, max: 5000 }), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(straight, fc.nat(20_000), fc.nat(20_000), (steps, one, other) => {
        const points = steps.reduce(
          (line, step, nth) => {
            const last = line.at(-1) ?? at(0, 0);
            return [...line, nth % 2 ? at(last.xCm, last.yCm + step) : at(last.xCm + step, last.yCm)];
          },
          [at(0, 0)],
        );
        const length = pathLengthCm(points);
        const [fromCm, toCm] = [Math.min(one, other), Math.max(one, other)];
        const part = stretchPoints(points, { fromCm, toCm });
        expect(pathLengthCm(part.map(({ xCm, yCm }) => at(Math.round(xCm), Math.round(yCm))))).toBe(
          Math.max(0, Math.min(toCm, length) - Math.min(fromCm, length)),
        );
      }),
    );
  });
});
