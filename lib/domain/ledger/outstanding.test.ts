import fc from 'fast-check';
import { expect, test } from 'vitest';
import { outstandingOf } from './outstanding';

test.each([
  ['nothing was paid', 300, 0, 300, 300],
  ['all was paid', 300, 0, 0, 0],
  ['more was paid', 300, 0, -50, 0],
  ['a part was paid', 300, 0, 120, 120],
  ['what was paid is of this one, the older', 300, 500, 400, 0],
  ['and what was beyond it, of the newer', 500, 0, 400, 400],
  ['a penny of it is left', 300, 500, 501, 1],
  ['something was owed before it', 300, 0, 900, 300],
  ['a charge of nothing', 0, 0, 100, 0],
])('%s', (_, charge, newer, balance, left) => expect(outstandingOf(charge, newer, balance)).toBe(left));

test.each([
  [-1, 0, 0],
  [0.5, 0, 0],
  [1, -1, 0],
  [1, 0, 0.5],
  [1, 0, Number.NaN],
])('%d, %d, %d are refused', (charge, newer, balance) =>
  expect(() => outstandingOf(charge, newer, balance)).toThrow(RangeError),
);

// Slow and plain: penny by penny the oldest charge is paid off first.
function paidOff(charges: readonly number[], paidMinor: number): number[] {
  const left = [...charges];
  let rest = paidMinor;
  for (let nth = 0; nth < left.length; nth++)
    while (rest > 0 && (left[nth] ?? 0) > 0) {
      left[nth] = (left[nth] ?? 0) - 1;
      rest--;
    }
  return left;
}

test('agrees with paying the oldest off penny by penny, and what is left sums to what is owed', () => {
  fc.assert(
    fc.property(fc.array(fc.nat(60), { maxLength: 8 }), fc.nat(400), (charges, paid) => {
      const balance = charges.reduce((sum, minor) => sum + minor, 0) - paid;
      const left = charges.map((minor, nth) => {
        const newer = charges.slice(nth + 1).reduce((sum, one) => sum + one, 0);
        return outstandingOf(minor, newer, balance);
      });
      expect(left).toEqual(paidOff(charges, paid));
      expect(left.reduce((sum, one) => sum + one, 0)).toBe(Math.max(0, balance));
    }),
  );
});
