import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '../calendar/calendar-date';
import { footprint } from '../ground/footprint';
import type { RecordedPlanting } from '../rotation/recorded-planting';
import { begunWeeks } from './begun-weeks';
import { groundShare } from './ground-share';
import { plantingYields } from './planting-yields';
import { diggingOf, type LoggedWork, manuringOf } from './treated-as';
import { twoFigures } from './two-figures';
import { yearsSinceGroup } from './years-since-group';

const ground = footprint(0, 0, 100, 100);
const wide = (widthCm: number, xCm = 0) => footprint(xCm, 0, widthCm, 100);
const day = (text: string) => text as CalendarDate;

describe('ground is treated', () => {
  it.each([
    [80, 'all'],
    [79, 'part'],
    [21, 'part'],
    [20, 'none'],
  ])('so far that %i %% of it is “%s”', (width, share) => expect(groundShare(ground, [wide(width)])).toBe(share));

  it('by all pieces together, each place once', () => {
    expect(groundShare(ground, [wide(50), wide(50, 20)])).toBe('part');
    expect(groundShare(ground, [wide(50), wide(50, 50)])).toBe('all');
    expect(groundShare(ground, [])).toBe('none');
  });
});

const work = (given: Partial<LoggedWork>): LoggedWork => ({
  ...{ kind: 'dug', footprint: ground, season: 2026, method: 'single-digging' },
  ...given,
});

describe('how ground was dug', () => {
  it.each<[string, LoggedWork[], string | null]>([
    ['nothing on record', [], null],
    ['double dug', [work({ method: 'double-digging' })], 'double'],
    ['dug another way', [work({})], 'not-double'],
    ['forked after it was double dug', [work({ method: 'double-digging' }), work({ method: 'forking' })], 'double'],
    ['half of it double dug', [work({ method: 'double-digging', footprint: wide(50) }), work({})], null],
    ['double dug for another season', [work({ method: 'double-digging', season: 2025 })], null],
    ['half of it dug another way, of the rest nothing on record', [work({ footprint: wide(50) })], null],
    ['manured, and nothing said of digging', [work({ kind: 'manured', method: null })], null],
  ])('%s', (_, works, found) => expect(diggingOf(ground, 2026, works)).toBe(found));
});

describe('whether ground was manured', () => {
  const manured = work({ kind: 'manured', method: null });
  it.each<[string, LoggedWork[], string | null]>([
    ['nothing on record', [], null],
    ['manured', [manured], 'manured'],
    ['dug, and no manure among what is on record', [work({})], 'none'],
    ['limed, and no manure', [work({ kind: 'limed', method: null })], 'none'],
    ['manured in half', [work({}), { ...manured, footprint: wide(50) }], null],
    ['manured for another season, and nothing for this one', [{ ...manured, season: 2024 }], null],
    ['manured for another season, and dug for this one', [{ ...manured, season: 2024 }, work({})], 'none'],
    ['half of it dug, of the rest nothing on record', [work({ footprint: wide(50) })], null],
  ])('%s', (_, works, found) => expect(manuringOf(ground, 2026, works)).toBe(found));
});

describe('years since the last of its group', () => {
  const stood = (season: number, group: string | null, on = ground, lastSeason = season): RecordedPlanting => ({
    ...{ id: `${season} ${group} ${on.xCm}`, footprint: on, cropKey: group ?? 'bare' },
    ...{ hostGroups: group ? [group] : [], cropGroup: null, firstSeason: season, lastSeason },
  });
  const since = (...history: RecordedPlanting[]) => yearsSinceGroup(ground, 2026, ['alliums'], history);
  const three = [stood(2025, 'legumes'), stood(2024, 'roots'), stood(2023, null)];

  it.each<[string, RecordedPlanting[], string | null]>([
    ['nothing on record', [], null],
    ['the year before', [stood(2025, 'alliums')], '1-2'],
    ['two years ago', [stood(2025, 'roots'), stood(2024, 'alliums')], '1-2'],
    ['two years ago, and of last year nothing on record', [stood(2024, 'alliums')], null],
    ['three years ago', [...three.slice(0, 2), stood(2023, 'alliums')], '3'],
    ['longer ago, or never', three, '4+'],
    ['one that stood on till last year', [stood(2020, 'alliums', ground, 2025)], '1-2'],
    ['of its own season and later, nothing', [...three, stood(2026, 'alliums'), stood(2027, 'alliums')], '4+'],
    ['last year on a fifth of the ground', [...three, stood(2025, 'alliums', wide(20))], '4+'],
    ['last year on half of the ground', [...three, stood(2025, 'alliums', wide(50))], null],
  ])('%s', (_, history, found) => expect(since(...history)).toBe(found));

  it('is not asked of what does not rotate', () => expect(yearsSinceGroup(ground, 2026, [], three)).toBeNull());
});

describe('the weeks it was begun in', () => {
  const weeks = (sownOn: string | null, plantedOn: string | null = null) =>
    begunWeeks(2026, { sownOn: sownOn && day(sownOn), plantedOn: plantedOn && day(plantedOn) } as never);
  it.each([
    ['2026-01-01', null, 'sown 1'],
    ['2026-01-28', null, 'sown 1'],
    ['2026-01-29', null, 'sown 5'],
    ['2026-03-02', '2026-04-20', 'sown 9'],
    [null, '2026-04-20', 'planted 13'],
    [null, '2025-10-20', 'planted before 41'],
    ['2026-12-31', null, 'sown 53'],
    ['2024-10-20', null, null],
    ['2027-01-01', null, null],
    [null, null, null],
  ])('%s %s', (sown, planted, found) => expect(weeks(sown, planted)).toBe(found));
});

describe('what a planting gave', () => {
  const grown = (id: string, cropKey: string, clearedOn: string | null = '2026-08-01') => ({
    ...{ id, bedId: 'b', cropKey, areaCm2: 20_000, firstSeason: 2026, lastSeason: 2026 },
    ...{ sownOn: null, plantedOn: null, clearedOn: clearedOn && day(clearedOn) },
  });
  const lifted = (plantingId: string, measure: 'grams' | 'pieces', amount: number) => ({
    ...{ plantingId, measure, amount, on: day('2026-07-20') },
  });
  const yields = (plantings: ReturnType<typeof grown>[], ...pickings: ReturnType<typeof lifted>[]) =>
    plantingYields(plantings as never, pickings, day('2026-11-01')).map(({ gPerM2, leftOut }) => gPerM2 ?? leftOut);

  it('is reckoned for each by itself, though they share a bed', () => {
    const both = [grown('p', 'onion'), grown('q', 'onion')];
    expect(yields(both, lifted('p', 'grams', 4_000), lifted('p', 'grams', 1_000), lifted('q', 'grams', 0))).toEqual([
      2_500, 0,
    ]);
  });

  it('is weighed where it was counted, if that is known, and left out where it is not', () => {
    expect(yields([grown('p', 'onion')], lifted('p', 'pieces', 40))).toEqual([2_400]);
    expect(yields([grown('p', 'lettuce')], lifted('p', 'pieces', 40))).toEqual(['counted']);
    expect(yields([grown('p', 'lettuce')], lifted('p', 'grams', 900), lifted('p', 'pieces', 40))).toEqual(['counted']);
  });

  it('is not compared while it stands', () => {
    expect(yields([grown('p', 'onion', null)], lifted('p', 'grams', 900))).toEqual(['standing']);
  });
});

it('two figures are two figures', () => {
  expect([2_347, 0.0567, 0, -1_949, 99.6].map(twoFigures)).toEqual([2_300, 0.057, 0, -1_900, 100]);
  expect(() => twoFigures(Number.NaN)).toThrow(RangeError);
});
