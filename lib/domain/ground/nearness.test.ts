import { expect, it } from 'vitest';
import { distanceCm } from './nearness';
import { cornersOf } from './polygon';

const square = cornersOf({ xCm: 0, yCm: 0, widthCm: 1000, lengthCm: 1000 });
const at = (originXCm: number, originYCm: number, bearingCentideg = 0) => ({
  frame: { originXCm, originYCm, bearingCentideg },
  polygon: square,
});

it('measures from boundary to boundary, whichever comes first', () => {
  expect(distanceCm(at(0, 0), at(1100, 0))).toBe(100);
  expect(distanceCm(at(1100, 0), at(0, 0))).toBe(100);
  expect(distanceCm(at(0, 0), at(1300, 1400))).toBe(500);
  expect(distanceCm(at(0, 0), at(1000, 0))).toBe(0);
});

it('follows the bearing', () => {
  // Turned by a quarter, the square lies to the left of its origin.
  expect(distanceCm(at(0, 0), at(2500, 0, 9000))).toBeCloseTo(500, 6);
});

it('says nothing of ground that nobody measured', () => {
  expect(distanceCm(at(0, 0), { frame: null, polygon: null })).toBeNull();
});
