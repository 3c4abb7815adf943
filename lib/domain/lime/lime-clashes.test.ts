import { describe, expect, it } from 'vitest';
import { calendarDate } from '../calendar/calendar-date';
import { footprint } from '../ground/footprint';
import { limeClashes } from './lime-clashes';

const spread = (id: string, doneOn: string | null, season = 2027, yCm = 0) => ({
  id,
  season,
  doneOn: doneOn === null ? null : calendarDate(doneOn),
  footprint: footprint(0, yCm, 100, 200),
});

describe('lime and manure on the same ground', () => {
  it.each([
    ['2026-11-01', '2027-01-31', 'manure-first', '2027-02-01'],
    ['2027-01-31', '2026-11-01', 'lime-first', '2027-02-01'],
    ['2026-11-01', '2026-11-01', 'same-day', '2027-02-01'],
  ])('manured %s, limed %s: too soon, %s', (manuredOn, limedOn, order, earliestOn) => {
    const found = limeClashes([spread('lime', limedOn)], [spread('manure', manuredOn)]);
    expect(found).toMatchObject([
      { limeId: 'lime', manureId: 'manure', areaCm2: 20_000, code: 'too-soon', order, earliestOn },
    ]);
  });

  it('keep apart from the first day of the wait on', () => {
    expect(limeClashes([spread('l', '2027-02-01')], [spread('m', '2026-11-01')])).toEqual([]);
    expect(limeClashes([spread('l', '2026-11-01')], [spread('m', '2027-02-01')])).toEqual([]);
  });

  it('are named by the ground that both touched, and not where they only touch', () => {
    const manure = [spread('m', '2026-11-01')];
    expect(limeClashes([spread('l', '2026-11-02', 2027, 150)], manure)).toMatchObject([{ areaCm2: 5000 }]);
    expect(limeClashes([spread('l', '2026-11-02', 2027, 200)], manure)).toEqual([]);
  });

  it('are not known of one season without a day, and left alone between seasons', () => {
    const undated = spread('m', null);
    expect(limeClashes([spread('l', '2026-11-02')], [undated])).toMatchObject([{ code: 'not-known' }]);
    expect(limeClashes([spread('l', null)], [undated])).toMatchObject([{ code: 'not-known' }]);
    expect(limeClashes([spread('l', null, 2026)], [undated])).toEqual([]);
    expect(limeClashes([], [undated])).toEqual([]);
  });

  it('come pair by pair, and nothing is changed', () => {
    const limed = Object.freeze([spread('a', '2026-11-02'), spread('b', '2026-11-03')]);
    const manured = Object.freeze([spread('c', '2026-11-04'), spread('d', '2026-11-05')]);
    const pairs = limeClashes(limed, manured).map(({ limeId, manureId }) => limeId + manureId);
    expect(pairs).toEqual(['ac', 'ad', 'bc', 'bd']);
  });
});
