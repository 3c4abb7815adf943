import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { amountTyped, plainAmount, seedUnits } from './seed-unit';

describe('an amount of seed as it is typed', () => {
  it.each([
    ['seeds', '250', 250],
    ['seeds', '0', 0],
    ['seeds', '1.5', null],
    ['seeds', '1234567', null],
    ['sets', '1,5', null],
    ['milligrams', '1.5', 1500],
    ['milligrams', '1,5', 1500],
    ['milligrams', '0.001', 1],
    ['milligrams', '0.0001', null],
    ['milligrams', '-1', null],
    ['milligrams', '1e3', null],
    ['seeds', '', null],
  ] as const)('%s: %s is %s', (unit, text, amount) => expect(amountTyped(unit, text)).toBe(amount));

  it('is read back as it is shown', () => {
    fc.assert(
      fc.property(fc.constantFrom(...seedUnits), fc.nat(999_999), (unit, amount) => {
        expect(amountTyped(unit, plainAmount(unit, amount))).toBe(amount);
      }),
    );
  });
});
