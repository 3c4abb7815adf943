import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { formatPoints, readPoints } from './read-points';

const at = (xCm: number, yCm: number) => ({ xCm, yCm });

describe('points as they are typed', () => {
  test.each([
    ['2, 27.5\n106, 27.5', [at(200, 2750), at(10_600, 2750)]],
    ['\r\n 2 ; 27,5 \r\n\r\n-1;0\r\n', [at(200, 2750), at(-100, 0)]],
    ['2 m, 90 ft', [at(200, 2743)]],
    ['', []],
  ])('%j', (text, points) => expect(readPoints(text, 'metric')).toEqual({ ok: true, points }));
  test('in feet for those who measure so', () =>
    expect(readPoints('10, 20 ft 6 in', 'imperial')).toEqual({ ok: true, points: [at(305, 625)] }));
  test.each([
    ['2', 'not-a-point', 1],
    ['2, 3\n\n4, x', 'not-a-point', 3],
    ['2, 3, 4', 'not-a-point', 1],
    ['2 27.5', 'not-a-point', 1],
    ['2,5; 3; 1', 'not-a-point', 1],
    ['0, 0\n10001, 0', 'too-far', 2],
    ['10001, x', 'not-a-point', 1],
  ])('%j is none', (text, code, line) => expect(readPoints(text, 'metric')).toEqual({ ok: false, code, line }));
});

test('what is shown reads back as the same points', () => {
  const place = fc.integer({ min: -1_000_000, max: 1_000_000 });
  fc.assert(
    fc.property(
      fc.array(fc.record({ xCm: place, yCm: place })),
      fc.constantFrom('metric' as const, 'imperial' as const),
      (points, units) => {
        expect(readPoints(formatPoints(points, units), units)).toEqual({ ok: true, points });
      },
    ),
  );
});
