import { describe, expect, it } from 'vitest';
import { habits } from '../catalogue/habits';
import { recipes } from '../catalogue/recipes';
import type { Setting } from '../catalogue/setting-row';
import type { Units } from '../quantity/length';
import { asTyped, boundsAsTyped, readTyped } from './typed-value';

const manure = recipes['recipe.alliums.rateGPerM2'];
const meal = recipes['recipe.alliums.mealGPerM2'];
const finish = recipes['recipe.alliums.springFinishCm'];
const ph = recipes['recipe.alliums.limeTargetPhTenths'];
const share = recipes['recipe.alliums.manureBottomPercent'];
const start = recipes['recipe.alliums.startHeavy'];
const method = recipes['recipe.alliums.method'];
const { trenchWidthCm, barrowLitres, sessionMinutes } = habits;

describe('what is typed', () => {
  it.each<[Setting, string, Units, string | number]>([
    [manure, '5', 'metric', 5000],
    [manure, '5.5 kg', 'metric', 5500],
    [manure, '5,5 kg/m²', 'metric', 5500],
    [manure, '5000 g/m2', 'metric', 5000],
    [manure, '50 t/ha', 'metric', 5000],
    [manure, '9', 'imperial', 4882],
    [manure, '5 kg/m²', 'imperial', 5000],
    [manure, '0', 'metric', 0],
    [manure, '0 lb/sq yd', 'metric', 0],
    [meal, '70', 'metric', 70],
    [meal, '4', 'imperial', 136],
    [meal, '4 oz', 'metric', 136],
    [meal, '5 oz/sq yd', 'metric', 170],
    [meal, '500 g', 'metric', 500],
    [finish, '8', 'metric', 8],
    [finish, '3', 'imperial', 8],
    [finish, '2 ½ in', 'metric', 6],
    [trenchWidthCm, '46', 'metric', 46],
    [trenchWidthCm, '18', 'imperial', 46],
    [trenchWidthCm, '2 ft', 'metric', 61],
    [trenchWidthCm, '0.6 m', 'imperial', 60],
    [ph, '7', 'metric', 70],
    [ph, '6.5', 'metric', 65],
    [ph, '6,8', 'metric', 68],
    [share, '75 %', 'metric', 75],
    [share, '0', 'metric', 0],
    [barrowLitres, '90 L', 'imperial', 90],
    [sessionMinutes, ' 60 ', 'metric', 60],
    [start, '1 Nov', 'metric', '11-01'],
    [method, 'forking', 'metric', 'forking'],
  ])('%# reads', (row, text, units, value) => expect(readTyped(row, text, units)).toBe(value));

  it.each<[Setting, string]>([
    [manure, '21'],
    [manure, '-1'],
    [manure, '1,000'],
    [manure, '5 stone'],
    [manure, '5 kg/m² or so'],
    [manure, '1e1'],
    [manure, 'NaN'],
    [manure, ''],
    [manure, '9999999 t/ha'],
    [meal, '501'],
    [meal, '1 kg'],
    [finish, '21'],
    [finish, '-1'],
    [trenchWidthCm, '29'],
    [trenchWidthCm, '101'],
    [trenchWidthCm, '0'],
    [trenchWidthCm, 'a spade'],
    [ph, '4.9'],
    [ph, '7.6'],
    [ph, '6.55'],
    [share, '101'],
    [share, '7.5'],
    [barrowLitres, '19'],
    [start, '29 February'],
    [start, '1/11'],
    [method, 'Forking'],
    [method, '__proto__'],
  ])('%# is refused', (row, text) => expect(readTyped(row, text, 'metric')).toBeNull());
});

describe('what is shown to be typed over', () => {
  const rows = [...Object.values(recipes), ...Object.values(habits)];
  const valuesOf = (row: Setting): (string | number)[] => {
    if (row.kind === 'choice') return row.choices.map(({ key }) => key);
    if (row.kind === 'month-day') return [row.value, '01-01', '12-31', '02-28'];
    const steps = Math.max(1, Math.floor((row.most - row.least) / 500));
    return [...Array.from({ length: 501 }, (_, at) => Math.min(row.most, row.least + at * steps)), row.value, row.most];
  };

  it.each(['metric', 'imperial'] as const)('reads back to the same value in %s', (units) => {
    const seen = new Set<string>();
    for (const row of rows.filter(({ name, kind }) => !seen.has(`${kind}${name}`) && seen.add(`${kind}${name}`)))
      for (const value of valuesOf(row))
        expect([row.name, value, readTyped(row, asTyped(row, value, units), units)]).toEqual([row.name, value, value]);
  });

  it('has bounds that can be typed as they are shown', () => {
    for (const units of ['metric', 'imperial'] as const)
      for (const row of rows.filter((one) => one.kind === 'whole')) {
        const { least, most } = boundsAsTyped(row, units);
        expect([row.name, least, readTyped(row, least, units) !== null]).toEqual([row.name, least, true]);
        expect([row.name, most, readTyped(row, most, units) !== null]).toEqual([row.name, most, true]);
      }
    const { kind, ...whole } = manure;
    expect(kind === 'whole' && 'most' in whole && boundsAsTyped({ kind, ...whole }, 'imperial')).toEqual({
      least: '0 lb/sq yd',
      most: '36.8 lb/sq yd',
    });
  });

  it('is as short as it can be', () => {
    expect(asTyped(meal, 136, 'imperial')).toBe('4 oz/sq yd');
    expect(asTyped(manure, 5000, 'metric')).toBe('5 kg/m²');
    expect(asTyped(manure, 5250, 'metric')).toBe('5.25 kg/m²');
    expect(asTyped(trenchWidthCm, 61, 'imperial')).toBe('24 in');
    expect(asTyped(ph, 70, 'metric')).toBe('7.0');
    expect(asTyped(start, '10-01', 'metric')).toBe('1 October');
  });

  it.each<[Setting, string | number]>([
    [meal, 501],
    [meal, Number.NaN],
    [trenchWidthCm, 60.5],
    [method, 'ploughing'],
    [start, '02-29'],
  ])('%# is never what a row does not allow', (row, value) =>
    expect(() => asTyped(row, value, 'metric')).toThrow(RangeError),
  );
});
