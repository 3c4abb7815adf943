import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { habitFields, habits } from '../catalogue/habits';
import { allows } from '../catalogue/setting-row';
import { habitsOf } from './habits-of';

describe('habits in force', () => {
  it('are what is taken while nothing was said', () => {
    const told = habitsOf({ member: {}, society: {} });
    for (const field of habitFields)
      expect(told[field]).toEqual({ value: habits[field].value, source: habits[field].source, setBy: 'catalogue' });
  });

  it('are the member’s own; the society has a say in its barrow alone', () => {
    const society = { barrowLitres: 100, 'habit.trenchWidthCm': 40, trenchWidthCm: 40 };
    const told = habitsOf({ member: { 'habit.trenchWidthCm': 46, 'habit.soil': 'clayey' }, society });
    expect(told.trenchWidthCm).toMatchObject({ value: 46, setBy: 'yours' });
    expect(told.soil).toMatchObject({ value: 'clayey', setBy: 'yours' });
    expect(told.barrowLitres).toMatchObject({ value: 100, setBy: 'society' });
    expect(habitsOf({ member: { 'habit.barrowLitres': 60 }, society }).barrowLitres).toMatchObject({
      value: 60,
      setBy: 'yours',
    });
    expect(habitsOf({ member: {}, society }).trenchWidthCm).toMatchObject({ value: 60, setBy: 'catalogue' });
  });

  it('are always allowed, whatever was kept', () => {
    const any = fc.dictionary(fc.constantFrom(...habitFields.map((field) => `habit.${field}`)), fc.anything());
    fc.assert(
      fc.property(any, fc.record({ barrowLitres: fc.anything() }), (member, society) => {
        const told = habitsOf({ member, society });
        for (const field of habitFields)
          expect([field, allows(habits[field], told[field].value)]).toEqual([field, true]);
      }),
    );
  });
});
