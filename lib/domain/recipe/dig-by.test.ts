import { describe, expect, it } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { digBy } from './dig-by';
import { recipesOf } from './recipe-of';

const recipes = recipesOf({ member: {}, society: {} });
const on = (day: string) => digBy(recipes, 2027, calendarDate(day));

describe('by when manure is to be dug in', () => {
  it('is told of heavy ground until its last day', () => {
    const heavy = { soil: 'heavy', from: '2026-10-01', first: '2026-12-01', last: '2026-12-15' };
    expect(on('2026-09-01')).toEqual(heavy);
    expect(on('2026-12-15')).toEqual(heavy);
  });

  it('is told of light ground after that, and then no more', () => {
    expect(on('2026-12-16')).toMatchObject({ soil: 'light', from: '2027-02-01', first: '2027-03-10' });
    expect(on('2027-05-15')).toMatchObject({ last: '2027-05-15' });
    expect(on('2027-05-16')).toBeNull();
  });

  it('is not told where no recipe takes manure', () => {
    const none = recipes.map((recipe) => ({ ...recipe, rateGPerM2: { ...recipe.rateGPerM2, value: 0 } }));
    expect(digBy(none, 2027, calendarDate('2026-09-01'))).toBeNull();
  });
});
