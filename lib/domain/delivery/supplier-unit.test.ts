import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { loadsIn } from '../quantity/load';
import { amountOf, unitMassG, type UnitOfSupplier } from './supplier-unit';

const trailer: UnitOfSupplier = { unit: 'trailer', trailerLitres: 6000 };
const bales: UnitOfSupplier = { unit: 'bales', baleMassG: 13_000 };

describe('a supplier’s unit', () => {
  it.each([
    [trailer, 400, 2_400_000],
    [{ unit: 'm3' } as const, 750, 750_000],
    [{ unit: 'tonnes' } as const, 750, 1_000_000],
    [bales, 70, 13_000],
  ])('%o at %i g a litre weighs %i g', (one, density, massG) => {
    expect(unitMassG(one, density)).toBe(massG);
  });

  it.each([
    [trailer, 5, { thousandths: 30_000, unit: 'm3' }],
    [{ unit: 'm3' } as const, 12, { thousandths: 12_000, unit: 'm3' }],
    [{ unit: 'tonnes' } as const, 3, { thousandths: 3000, unit: 'tonnes' }],
    [bales, 20, { thousandths: 20_000, unit: 'bales' }],
  ])('%o, %i of them, are written as %o', (one, units, amount) => {
    expect(amountOf(one, units)).toEqual(amount);
  });

  it('refuses what holds or weighs nothing', () => {
    for (const one of [
      { ...trailer, trailerLitres: 0 },
      { ...bales, baleMassG: -1 },
      { ...bales, baleMassG: 1.5 },
    ]) {
      expect(() => unitMassG(one as UnitOfSupplier, 400)).toThrow(RangeError);
      expect(() => amountOf(one as UnitOfSupplier, 1)).toThrow(RangeError);
    }
    expect(() => unitMassG(trailer, 0)).toThrow(RangeError);
    expect(() => amountOf(trailer, 0)).toThrow(RangeError);
  });

  it('holds as many barrow-loads by its amount as by its weight', () => {
    const one = fc.oneof(
      fc.integer({ min: 1, max: 40_000 }).map((trailerLitres): UnitOfSupplier => ({ unit: 'trailer', trailerLitres })),
      fc.constantFrom<UnitOfSupplier>({ unit: 'm3' }, { unit: 'tonnes' }),
    );
    const whole = (max: number) => fc.integer({ min: 1, max });
    fc.assert(
      fc.property(one, whole(99), whole(2000), whole(200), (unit, units, densityGPerL, barrowLitres) => {
        const byWeight = Math.floor((units * unitMassG(unit, densityGPerL)) / (barrowLitres * densityGPerL));
        expect(loadsIn(amountOf(unit, units), barrowLitres, densityGPerL)).toBe(byWeight);
      }),
    );
  });
});
