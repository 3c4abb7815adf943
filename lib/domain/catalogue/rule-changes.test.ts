import { describe, expect, it } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { ruleChanges } from './rule-changes';
import { settingValueWords } from './setting-value-words';

const today = calendarDate('2026-11-28');
const set = (key: string, value: string | number | null, from: string, setOn = from) => ({
  ...{ key, value },
  from: calendarDate(from),
  setOn: calendarDate(setOn),
});

describe('the changes of rules that members are told of', () => {
  it('tell the value before and the value after', () => {
    expect(ruleChanges([set('manuringIntervalYears', 4, '2026-12-01', '2026-11-20')], today)).toEqual([
      { key: 'manuringIntervalYears', before: 3, after: 4, from: '2026-12-01' },
    ]);
  });

  it('are told for four weeks, and while they are still to come', () => {
    const on = (from: string, setOn = from) => ruleChanges([set('barrowLitres', 90, from, setOn)], today).length;
    expect(on('2026-11-01')).toBe(1);
    expect(on('2026-10-31')).toBe(0);
    expect(on('2027-06-01', '2026-01-01')).toBe(1);
    expect(on('2026-10-01', '2026-11-20')).toBe(1);
  });

  it('leave out what was set twice for one day, what is as it was, and what is no rule', () => {
    const twice = [set('capLoads', 6, '2026-11-20'), set('capLoads', 8, '2026-11-20', '2026-11-21')];
    expect(ruleChanges(twice, today)).toEqual([{ key: 'capLoads', before: 0, after: 8, from: '2026-11-20' }]);
    expect(ruleChanges([...twice, set('capLoads', 8, '2026-11-25')], today)).toHaveLength(1);
    expect(ruleChanges([...twice, set('capLoads', 0, '2026-11-20', '2026-11-22')], today)).toEqual([]);
    expect(
      ruleChanges([set('recipe.alliums.strawGPerM2', 0, '2026-11-20'), set('gone', 1, '2026-11-20')], today),
    ).toEqual([]);
  });

  it('come with the latest first, each from the one before', () => {
    const values = [set('barrowLitres', 90, '2026-11-10'), set('barrowLitres', 100, '2026-11-20')];
    expect(ruleChanges(values, today).map(({ before, after }) => [before, after])).toEqual([
      [90, 100],
      [85, 90],
    ]);
  });
});

describe('a value in words', () => {
  it('has its unit, or the name of the choice', () => {
    expect(settingValueWords('manuringIntervalYears', 4)).toBe('4 years');
    expect(settingValueWords('capLoads', 0)).toBe('no limit');
    expect(settingValueWords('capLoads', 8)).toBe('8 loads');
    expect(settingValueWords('neighboursSee', 'group')).toBe('group only');
    expect(settingValueWords('seasonFrom', '05-01')).toBe('1 May');
    expect(settingValueWords('trouble.clubroot', 99)).toBe('never clear');
  });
});
