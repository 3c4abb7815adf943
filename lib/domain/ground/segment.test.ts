import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cross, crossingShare, distanceToSegment, meet, nearestShare, onSegment, pointAlong, side } from './segment';

const at = (xCm: number, yCm: number) => ({ xCm, yCm });
const point = fc.record({ xCm: fc.integer({ min: -50, max: 50 }), yCm: fc.integer({ min: -50, max: 50 }) });
const segment = fc.tuple(point, point).filter(([a, b]) => a.xCm !== b.xCm || a.yCm !== b.yCm);

describe('on the line or beside it', () => {
  test('sides', () => {
    expect([at(5, 1), at(5, 0), at(5, -1)].map((p) => side(at(0, 0), at(10, 0), p))).toEqual([1, 0, -1]);
  });
  test('the ends lie on a segment, a point beyond does not', () => {
    expect([0, 10, 11].map((x) => onSegment(at(0, 0), at(10, 0), at(x, 0)))).toEqual([true, true, false]);
  });
  test('touching is meeting and not crossing', () => {
    const [a, b] = [at(0, 0), at(10, 0)];
    expect([cross(a, b, at(5, 0), at(5, 9)), meet(a, b, at(5, 0), at(5, 9))]).toEqual([false, true]);
    expect([cross(a, b, at(5, -1), at(5, 9)), meet(a, b, at(5, -1), at(5, 9))]).toEqual([true, true]);
    expect([cross(a, b, at(5, 1), at(5, 9)), meet(a, b, at(5, 1), at(5, 9))]).toEqual([false, false]);
  });
  test('both ends in one place', () => {
    expect(nearestShare(at(3, 3), at(3, 3), at(9, 9))).toBe(0);
    expect(distanceToSegment(at(0, 0), at(0, 0), at(3, 4))).toBe(5);
  });
});

test('where two segments cross, both shares name one point', () => {
  fc.assert(
    fc.property(segment, segment, ([a, b], [c, d]) => {
      fc.pre(cross(a, b, c, d));
      const [one, other] = [pointAlong(a, b, crossingShare(a, b, c, d)), pointAlong(c, d, crossingShare(c, d, a, b))];
      expect(one.xCm).toBeCloseTo(other.xCm, 9);
      expect(one.yCm).toBeCloseTo(other.yCm, 9);
    }),
  );
});

test('no point of a segment is nearer than the nearest', () => {
  fc.assert(
    fc.property(segment, point, fc.double({ min: 0, max: 1, noNaN: true }), ([a, b], p, share) => {
      const other = pointAlong(a, b, share);
      expect(distanceToSegment(a, b, p)).toBeLessThanOrEqual(Math.hypot(other.xCm - p.xCm, other.yCm - p.yCm) + 1e-9);
    }),
  );
});
