import { expect, it } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { standingAsks, standsFor } from './standing';

const on = (materialKey: string, day: string) => ({ materialKey, arrivesOn: calendarDate(day) });
const manure = { serves: 'manure', autumnOnly: true } as const;

it.each([
  ['2026-08-31', false],
  ['2026-09-01', true],
  ['2026-12-31', true],
  ['2027-01-01', false],
])('of autumn only, a delivery on %s: %s', (day, fits) => {
  expect(standsFor(manure, on('horse-manure', day))).toBe(fits);
  expect(standsFor({ ...manure, autumnOnly: false }, on('horse-manure', day))).toBe(true);
});

it('is for what feeds turns, or for straw, and for nothing else', () => {
  const straw = { serves: 'straw', autumnOnly: false } as const;
  const day = '2026-11-14';
  expect(standsFor(manure, on('hen-manure', day))).toBe(false);
  expect(standsFor(manure, on('straw', day))).toBe(false);
  expect(standsFor(manure, on('no such thing', day))).toBe(false);
  expect(standsFor(straw, on('straw', day))).toBe(true);
  expect(standsFor(straw, on('horse-manure', day))).toBe(false);
});

it('asks for the need, up to both limits', () => {
  expect(standingAsks(7, null, null)).toBe(7);
  expect(standingAsks(7, 5, 12)).toBe(5);
  expect(standingAsks(7, 9, 4)).toBe(4);
  expect(standingAsks(0, 5, 4)).toBe(0);
  expect(() => standingAsks(1.5, null, null)).toThrow(RangeError);
});
