import { describe, expect, it } from 'vitest';
import { compostedMaterials, notManure } from '../catalogue/harvest-intervals';
import { materialOf } from '../catalogue/materials';
import { manureStateOf } from './manure-state';

describe('how far a manure has come', () => {
  it.each([
    [0, 'raw'],
    [2, 'raw'],
    [3, 'young'],
    [11, 'young'],
    [12, 'rotted'],
    [240, 'rotted'],
  ])('after %i months: %s', (ageMonths, state) =>
    expect(manureStateOf('horse-manure', ageMonths)).toEqual({ state, monthsHeaped: ageMonths }),
  );

  it('is raw where nobody knows its age, whatever it is called', () => {
    expect(manureStateOf('horse-manure', null)).toEqual({ state: 'raw', monthsHeaped: null });
    expect(manureStateOf(null, null)).toEqual({ state: 'raw', monthsHeaped: null });
  });

  it('is composted for what is sold as compost, and nothing for straw and wood chip', () => {
    for (const key of compostedMaterials) expect(manureStateOf(key, null)).toMatchObject({ state: 'composted' });
    for (const key of notManure) expect(manureStateOf(key, 4)).toBeNull();
    expect([...compostedMaterials, ...notManure].filter((key) => !materialOf(key))).toEqual([]);
  });

  it('takes no age that is none', () => {
    expect(() => manureStateOf('straw', -1)).toThrow(RangeError);
    expect(() => manureStateOf(null, 1.5)).toThrow(RangeError);
  });
});
