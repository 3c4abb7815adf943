import { describe, expect, it } from 'vitest';
import type { SoilKey } from '../catalogue/soils';
import { isWindow } from './day-for';
import { diggingWindow, windowDays } from './digging-window';
import { recipeOf, recipesOf } from './recipe-of';

const onions = recipeOf('alliums', { member: {}, society: {} });

describe('when ground is made ready', () => {
  it('is before hard winter on heavy soil, in spring on light', () => {
    expect(diggingWindow(onions, 'clayey', 2027)).toEqual({ from: '2026-10-01', until: '2026-12-01' });
    expect(diggingWindow(onions, 'sandy', 2027)).toEqual({ from: '2027-02-01', until: '2027-03-10' });
  });

  it('may go on over New Year', () => {
    const over = { ...onions, finishHeavy: { ...onions.finishHeavy, value: '01-31' } };
    expect(diggingWindow(over, 'clayey', 2027)).toEqual({ from: '2026-10-01', until: '2027-01-31' });
  });

  it('begins no later than it ends, for every group of the catalogue', () => {
    for (const recipe of recipesOf({ member: {}, society: {} }))
      for (const soil of ['sandy', 'silty', 'loamy', 'clayey', 'peaty'] as const) {
        const { from, until } = windowDays(recipe, soil);
        expect([recipe.group, soil, isWindow(from, until)]).toEqual([recipe.group, soil, true]);
      }
  });

  it('is refused for no soil and no season', () => {
    expect(() => windowDays(onions, 'rock' as SoilKey)).toThrow(RangeError);
    expect(() => diggingWindow(onions, 'clayey', 1900)).toThrow(RangeError);
    expect(() => diggingWindow(onions, 'clayey', 2026.5)).toThrow(RangeError);
  });
});

describe('two days of the year', () => {
  it.each([
    ['10-01', '12-01', true],
    ['10-01', '10-01', true],
    ['12-15', '10-01', false],
    ['11-01', '02-28', true],
    ['02-01', '04-01', true],
    ['03-01', '11-01', false],
    ['06-30', '07-01', false],
    ['07-01', '06-30', true],
  ])('%s to %s: %s', (from, until, is) => expect(isWindow(from, until)).toBe(is));
});
