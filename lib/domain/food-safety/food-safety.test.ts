import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, calendarDate } from '../calendar/calendar-date';
import { cropContacts } from '../catalogue/contact';
import { harvestIntervals, type ManureState } from '../catalogue/harvest-intervals';
import { sources } from '../catalogue/sources';
import { footprint } from '../ground/footprint';
import { earliestHarvest, type ManuredGround, meetingOf } from './earliest-harvest';
import { harvestWarnings, type Manuring, type PlantingToHarvest } from './harvest-warnings';
import { madeByHeat } from './made-by-heat';

const day = calendarDate;
const ground = (state: ManureState, over: Partial<ManuredGround> = {}): ManuredGround => ({
  manuredOn: day('2027-01-01'),
  state,
  monthsHeaped: null,
  incorporated: true,
  ...over,
});
const earliest = (state: ManureState, cropKey: string, over: Partial<ManuredGround> = {}) =>
  earliestHarvest(ground(state, over), meetingOf(cropKey));

describe('the earliest harvest', () => {
  test.each<[ManureState, string, string, string | null]>([
    // Cooked: the organic rule alone, by contact.
    ['raw', 'parsnip', '2027-05-01', 'organic-contact'],
    ['raw', 'french-bean', '2027-05-01', 'organic-contact'],
    ['raw', 'runner-bean', '2027-04-01', 'organic-clear'],
    ['rotted', 'parsnip', '2027-05-01', 'organic-contact'],
    ['composted', 'parsnip', '2027-01-01', null],
    // Raw: a year from fresh.
    ['raw', 'lettuce', '2028-01-01', 'year-of-rot'],
    ['young', 'carrot', '2027-10-01', 'year-of-rot'],
    ['rotted', 'carrot', '2027-05-01', 'organic-contact'],
    ['rotted', 'mangetout', '2027-04-01', 'organic-clear'],
    ['composted', 'lettuce', '2027-03-01', 'food-agency-treated'],
  ])('%s manure, %s: %s', (state, crop, on, decidedBy) =>
    expect(earliest(state, crop)).toMatchObject({ earliestOn: on, decidedBy }),
  );

  test('months in the heap count towards the year', () => {
    expect(earliest('young', 'lettuce', { monthsHeaped: 5 }).earliestOn).toBe('2027-08-01');
    // Six months for what is not rotted remain.
    expect(earliest('young', 'lettuce', { monthsHeaped: 11 })).toMatchObject({
      earliestOn: '2027-07-01',
      decidedBy: 'food-agency-fresh',
    });
    expect(earliest('rotted', 'lettuce', { monthsHeaped: 30 }).earliestOn).toBe('2027-05-01');
    expect(earliest('raw', 'lettuce', { monthsHeaped: 0 }).reasons).toEqual([]);
  });

  test('what is only remembered is shown and sets no date', () => {
    const { rules, earliestOn } = earliest('young', 'lettuce');
    expect(rules.find(({ key }) => key === 'food-agency-present')).toMatchObject({
      counts: false,
      earliestOn: '2028-01-01',
    });
    expect(earliestOn).toBe('2027-10-01');
  });

  test('a crop that nobody knows is taken at its strictest, and what is unsure is said', () => {
    const unknown = earliestHarvest(ground('raw', { incorporated: false }), null);
    expect(unknown.earliestOn).toBe('2028-01-01');
    expect(unknown.reasons).toEqual(['contact-not-known', 'laid-on-the-surface', 'months-not-known']);
    expect(meetingOf('dandelion')).toBeNull();
  });

  test.each([-1, 0.5, Number.NaN])('%s months are refused', (monthsHeaped) =>
    expect(() => earliest('raw', 'lettuce', { monthsHeaped })).toThrow(RangeError),
  );

  test('is never before a rule that counts, nor before the manure; further come is never later', () => {
    const states: readonly ManureState[] = ['raw', 'young', 'rotted', 'composted'];
    fc.assert(
      fc.property(fc.constantFrom(...cropContacts), fc.integer({ min: 0, max: 900 }), (crop, days) => {
        const manuredOn = addDays(day('2026-01-01'), days);
        const dates = states.map((state) => {
          const result = earliestHarvest(ground(state, { manuredOn }), crop);
          expect(result.earliestOn >= manuredOn).toBe(true);
          for (const rule of result.rules) if (rule.counts) expect(result.earliestOn >= rule.earliestOn).toBe(true);
          return result.earliestOn;
        });
        expect(dates).toEqual([...dates].sort().reverse());
      }),
    );
  });
});

describe('warnings', () => {
  const bed = footprint(0, 0, 100, 200);
  const planting = (over: Partial<PlantingToHarvest> = {}): PlantingToHarvest => ({
    id: 'carrots',
    footprint: bed,
    cropKey: 'carrot',
    begunOn: day('2027-04-01'),
    harvestFrom: day('2027-07-01'),
    clearedOn: null,
    ...over,
  });
  const manured = (over: Partial<Manuring> = {}): Manuring => ({ id: 'm', footprint: bed, ...ground('raw'), ...over });

  test('a harvest too soon, by the ground it touches', () =>
    expect(harvestWarnings([planting()], [manured({ footprint: footprint(0, 0, 100, 100) })])).toEqual([
      {
        plantingId: 'carrots',
        code: 'too-soon',
        earliestOn: '2028-01-01',
        areaCm2: 10_000,
        manuringIds: ['m'],
      },
    ]));

  test('none on the day itself, one on its eve', () => {
    expect(harvestWarnings([planting({ harvestFrom: day('2028-01-01') })], [manured()])).toEqual([]);
    expect(harvestWarnings([planting({ harvestFrom: day('2027-12-31') })], [manured()])).toHaveLength(1);
  });

  test('several manurings in one warning: the latest day, the ground of all of them once', () => {
    const later = manured({
      id: 'later',
      manuredOn: day('2027-02-01'),
      state: 'rotted',
      footprint: footprint(0, 50, 100, 100),
    });
    const two = [manured({ footprint: footprint(0, 0, 100, 100), state: 'rotted' }), later];
    expect(harvestWarnings([planting({ harvestFrom: day('2027-04-15') })], two)).toEqual([
      {
        plantingId: 'carrots',
        code: 'too-soon',
        earliestOn: '2027-06-01',
        areaCm2: 15_000,
        manuringIds: ['m', 'later'],
      },
    ]);
  });

  test('without a day of harvest its first day is told, while it is still to come', () => {
    const open = planting({ harvestFrom: null });
    expect(harvestWarnings([open], [manured()]).map(({ code }) => code)).toEqual(['not-before']);
    expect(harvestWarnings([{ ...open, begunOn: null }], [manured()])).toHaveLength(1);
    expect(harvestWarnings([{ ...open, begunOn: day('2028-01-01') }], [manured()])).toEqual([]);
  });

  test('uncomposted manure on a growing crop', () => {
    const during = manured({ manuredOn: day('2027-05-01') });
    expect(harvestWarnings([planting()], [during]).map(({ code }) => code)).toEqual([
      'too-soon',
      'manured-while-growing',
    ]);
    expect(harvestWarnings([planting()], [{ ...during, state: 'composted' }]).map(({ code }) => code)).toEqual([]);
  });

  test('nothing for green manures, for ground elsewhere, or for manure after the crop was cleared', () => {
    expect(harvestWarnings([planting({ cropKey: 'phacelia' })], [manured()])).toEqual([]);
    expect(harvestWarnings([planting()], [manured({ footprint: footprint(100, 0, 50, 50) })])).toEqual([]);
    const cleared = planting({ clearedOn: day('2027-09-01') });
    expect(harvestWarnings([cleared], [manured({ manuredOn: day('2027-09-01') })])).toEqual([]);
    expect(harvestWarnings([], [])).toEqual([]);
  });
});

describe('compost by heat', () => {
  const days = (count: number, celsius = 60) => Array.from({ length: count }, () => celsius);
  test.each([
    ['vessel', 3, 60, 0, true],
    ['vessel', 2, 60, 0, false],
    ['vessel', 3, 55, 0, true],
    ['vessel', 3, 54.9, 0, false],
    ['vessel', 3, 76.6, 0, true],
    ['vessel', 3, 76.7, 0, false],
    ['windrow', 15, 60, 5, true],
    ['windrow', 15, 60, 4, false],
    ['windrow', 14, 60, 5, false],
  ] as const)('%s, %s days at %s °C, %s turnings: %s', (method, count, celsius, turnings, made) =>
    expect(madeByHeat({ method, dailyCelsius: days(count, celsius), turnings })).toBe(made),
  );

  test('a heap that nobody measured is none, and no number is none', () => {
    expect(madeByHeat({ method: 'vessel', dailyCelsius: [], turnings: 9 })).toBe(false);
    expect(() => madeByHeat({ method: 'vessel', dailyCelsius: [Number.NaN], turnings: 0 })).toThrow(RangeError);
    expect(() => madeByHeat({ method: 'vessel', dailyCelsius: [60], turnings: -1 })).toThrow(RangeError);
  });
});

test('every interval has a source; what counts is published', () => {
  for (const { source, counts } of harvestIntervals) {
    expect(Object.hasOwn(sources, source)).toBe(true);
    if (counts) expect(['from-memory', 'common-practice']).not.toContain(source);
  }
});
