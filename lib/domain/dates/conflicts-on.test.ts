import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { addDays, type CalendarDate, calendarDate } from '../calendar/calendar-date';
import { crops } from '../catalogue/crops';
import { referenceFrosts } from '../catalogue/windows';
import { footprint } from '../ground/footprint';
import { conflictsOn, type DateConflict, type DateRules } from './conflicts-on';
import { canStillGoIn, type DatedPlanting, isSownInPlace, waysOf } from './dated-planting';
import { groundReady } from './ground-ready';
import { groundSpan } from './ground-span';
import { nextSteps } from './next-steps';

const day = calendarDate;
const today = day('2026-11-28');
const rules: DateRules = { frosts: referenceFrosts, today, edgeWidthCm: 30, edgeSharePercent: 5 };
const bed = footprint(0, 0, 120, 360);

function planting(id: string, cropKey: string, season: number, more: Partial<DatedPlanting> = {}): DatedPlanting {
  const none = { sownOn: null, plantedOn: null, clearedOn: null };
  return { id, cropKey, season, footprint: bed, planned: season > 2026, ...none, ...more };
}

const codes = (plantings: DatedPlanting[], own: Partial<DateRules> = {}) =>
  conflictsOn(plantings, { ...rules, ...own }).map((one) => [one.code, one.plantingId]);

describe('the crop before', () => {
  test('kale is in the way of onion sets, and can be cleared in time', () =>
    expect(conflictsOn([planting('k', 'kale', 2026), planting('s', 'shallot', 2027)], rules)).toEqual([
      {
        code: 'stands-too-long',
        plantingId: 's',
        beforeId: 'k',
        clearFrom: '2026-11-01',
        clearBy: '2027-04-30',
        wantedFrom: '2027-01-15',
        wantedBy: '2027-03-15',
        daysLate: 46,
        isCertain: false,
        areaCm2: 43_200,
      },
    ]));

  test('on its last day the next can still go in', () => {
    const leeks = (clearedOn: string) => planting('l', 'leek', 2026, { clearedOn: day(clearedOn) });
    const parsnips = planting('p', 'parsnip', 2027);
    expect(codes([leeks('2027-03-15'), parsnips])).toEqual([]);
    expect(codes([leeks('2027-03-16'), parsnips])).toEqual([['stands-too-long', 'p']]);
  });

  test('purple sprouting is certain to be in the way of garlic in the autumn, but not in the spring', () => {
    const sprouting = planting('b', 'purple-sprouting', 2026);
    expect(conflictsOn([sprouting, planting('g', 'garlic', 2027)], rules)).toMatchObject([{ isCertain: false }]);
    const autumn = planting('v', 'broad-bean', 2027);
    expect(conflictsOn([sprouting, autumn], { ...rules, frosts: { ...referenceFrosts, lastFrost: '02-01' } })).toEqual(
      expect.arrayContaining([expect.objectContaining({ code: 'stands-too-long', plantingId: 'v' })]),
    );
  });

  test('rhubarb stands until it is cleared', () => {
    const rhubarb = planting('r', 'rhubarb', 2022);
    expect(codes([rhubarb, planting('o', 'onion', 2027)])).toEqual([['stands-on', 'o']]);
    expect(codes([{ ...rhubarb, clearedOn: day('2026-11-01') }, planting('o', 'onion', 2027)])).toEqual([]);
  });

  test('beside each other, or by a mere edge, they are not in each other’s way', () => {
    const kale = (yCm: number) => planting('k', 'kale', 2026, { footprint: footprint(0, yCm, 120, 100) });
    const shallots = planting('s', 'shallot', 2027, { footprint: footprint(0, 100, 120, 200) });
    expect(codes([kale(0), shallots])).toEqual([]);
    expect(codes([kale(29), shallots])).toEqual([]);
    expect(codes([kale(30), shallots])).toEqual([['stands-too-long', 's']]);
  });

  test('two crops of one season follow each other', () => {
    expect(codes([planting('e', 'early-potato', 2027), planting('l', 'leek', 2027)])).toEqual([]);
    expect(codes([planting('m', 'maincrop-potato', 2027), planting('l', 'leek', 2027)])).toEqual([
      ['stands-too-long', 'l'],
    ]);
  });

  test('what stands already is in nobody’s debt', () => {
    const onions = planting('o', 'onion', 2027, { plantedOn: day('2027-03-20') });
    expect(codes([planting('k', 'kale', 2026), onions], { today: day('2027-03-21') })).toEqual([]);
  });

  test('bare ground and unknown crops are passed over', () =>
    expect(codes([planting('b', 'bare', 2026), planting('t', 'triffid', 2027), planting('x', 'bare', 2027)])).toEqual(
      [],
    ));
});

describe('by itself', () => {
  test('a crop whose last day is past is too late', () =>
    expect(conflictsOn([planting('p', 'parsnip', 2027)], { ...rules, today: day('2027-03-20') })).toEqual([
      { code: 'too-late', plantingId: 'p', closedOn: '2027-03-15', daysAgo: 5 },
    ]));

  test('a crop to which the frosts leave no time is told of', () =>
    expect(
      conflictsOn([planting('w', 'winter-squash', 2027)], {
        ...rules,
        frosts: { lastFrost: '06-10', firstFrost: '09-20' },
      }),
    ).toEqual([{ code: 'season-too-short', plantingId: 'w', shortDays: 44 }]));
});

const anyDays = fc.option(fc.integer({ min: -200, max: 500 }).map((days) => addDays(today, days)));
const anyPlanting = fc
  .record({
    crop: fc.constantFrom(...crops.map(({ key }) => key)),
    season: fc.integer({ min: 2025, max: 2028 }),
    y: fc.integer({ min: 0, max: 300 }),
    plantedOn: anyDays,
  })
  .map(({ crop, season, y, plantedOn }) =>
    planting('', crop, season, { footprint: footprint(0, y, 120, 100), plantedOn }),
  );

describe('whatever is planted', () => {
  it('clearing earlier never makes a new conflict', () => {
    fc.assert(
      fc.property(
        fc.array(anyPlanting, { minLength: 2, maxLength: 5 }),
        fc.integer({ min: 0, max: 400 }),
        (some, days) => {
          const plantings = some.map((one, at) => ({ ...one, id: String(at) }));
          const [first, ...others] = plantings;
          if (!first) return;
          const cleared = (on: CalendarDate) => [{ ...first, clearedOn: on }, ...others];
          const late = addDays(today, 500);
          const key = (one: DateConflict) => [one.code, one.plantingId, 'beforeId' in one ? one.beforeId : ''].join();
          const before = new Set(conflictsOn(cleared(late), rules).map(key));
          const after = conflictsOn(cleared(addDays(late, -days)), rules).map(key);
          expect(after.filter((one) => !before.has(one))).toEqual([]);
        },
      ),
    );
  });

  it('takes its ground before it leaves it, and the order given changes nothing', () => {
    fc.assert(
      fc.property(fc.array(anyPlanting, { maxLength: 5 }), (some) => {
        const plantings = some.map((one, at) => ({ ...one, id: String(at) }));
        for (const one of plantings) {
          const span = groundSpan(one, referenceFrosts, today);
          if (!span) throw new Error('every crop of the catalogue has windows');
          expect(span.from <= span.to).toBe(true);
          if (span.clearFrom && span.clearBy) expect(span.clearFrom <= span.clearBy).toBe(true);
        }
        const sorted = (ones: DatedPlanting[]) =>
          conflictsOn(ones, rules)
            .map((one) => JSON.stringify(one))
            .sort();
        expect(sorted(plantings.toReversed())).toEqual(sorted(plantings));
      }),
    );
  });
});

describe('what is done next', () => {
  const steps = (one: DatedPlanting, on = today) =>
    nextSteps(one, referenceFrosts, on).map(({ step, way, state }) => [step, way, state.code]);

  test('garlic is planted now, or else in spring', () => {
    expect(steps(planting('g', 'garlic', 2027))).toEqual([
      ['plant-out', 'autumn', 'open'],
      ['plant-out', 'spring', 'opens'],
    ]);
    expect(steps(planting('g', 'garlic', 2027), day('2026-12-01'))).toEqual([['plant-out', 'spring', 'opens']]);
  });

  test('onions are sown under cover in January, or sets planted in spring', () => {
    const both = [
      ['under-cover', 'seed', 'opens'],
      ['plant-out', 'sets', 'opens'],
    ];
    expect(steps(planting('o', 'onion', 2027))).toEqual(both);
    expect(steps(planting('o', 'onion', 2027, { sownOn: day('2027-01-12') }), day('2027-03-20'))).toEqual([
      ['plant-out', 'seed', 'open'],
    ]);
  });

  test('where the seed is not sown in time, plants can still be had', () =>
    expect(steps(planting('l', 'leek', 2027), day('2027-06-10'))).toEqual([['plant-out', 'usual', 'open']]));

  test('what is in its ground wants no more sowing', () => {
    expect(steps(planting('c', 'carrot', 2027, { sownOn: day('2027-03-20') }), day('2027-04-01'))).toEqual([]);
    expect(steps(planting('g', 'garlic', 2027, { plantedOn: today }))).toEqual([]);
    expect(steps(planting('k', 'kale', 2026))).toEqual([]);
  });

  test('seed goes where its nearest window says', () => {
    const lettuce = (sownOn: string) => planting('l', 'lettuce', 2027, { sownOn: day(sownOn) });
    expect(isSownInPlace(lettuce('2027-02-20'), referenceFrosts)).toBe(false);
    expect(isSownInPlace(lettuce('2027-06-20'), referenceFrosts)).toBe(true);
    expect(isSownInPlace(planting('g', 'garlic', 2027, { sownOn: today }), referenceFrosts)).toBe(true);
    expect(isSownInPlace(planting('g', 'garlic', 2027), referenceFrosts)).toBe(false);
  });

  test('carrots can go in up to their last day', () => {
    const can = (on: string) => canStillGoIn('carrot', 2027, referenceFrosts, day(on));
    expect([can('2027-07-10'), can('2027-07-11')]).toEqual([true, false]);
    expect(canStillGoIn('triffid', 2027, referenceFrosts, today)).toBe(false);
  });

  test('the ways that are open', () => {
    const ways = (on: string) =>
      waysOf(planting('b', 'broad-bean', 2027), referenceFrosts, day(on)).map(({ way }) => way);
    expect(ways('2026-11-30')).toEqual(['autumn', 'spring']);
    expect(ways('2026-12-01')).toEqual(['spring']);
    expect(ways('2027-04-16')).toEqual(['autumn', 'spring']);
  });
});

describe('the ground', () => {
  const sheet = {
    id: 'd',
    season: 2027,
    footprint: bed,
    done: 2,
    total: 6,
    from: day('2026-11-01'),
    until: day('2026-12-12'),
  };
  const nothing = { sheets: [], clashes: [], waits: [] };
  const beans = planting('v', 'broad-bean', 2027);

  test('is to be finished before the crop goes in', () => {
    const found = (own: object) => groundReady([beans], { ...nothing, sheets: [{ ...sheet, ...own }] }, rules);
    expect(found({})).toMatchObject([
      { code: 'ground-to-finish', sheetId: 'd', trenchesLeft: 4, wantedBy: '2027-04-15', isLate: false },
    ]);
    expect(found({ until: '2027-04-16' })).toMatchObject([{ isLate: true }]);
    expect(found({ season: 2028 })).toEqual([]);
    expect(found({ done: 6 })).toEqual([]);
    expect(found({ footprint: footprint(0, 400, 120, 100) })).toEqual([]);
  });

  test('has had lime and manure too near each other', () => {
    const clashes = [{ footprint: bed, days: 10, daysWanted: 30 }];
    expect(groundReady([beans], { ...nothing, clashes }, rules)).toEqual([
      { code: 'lime-and-manure', plantingId: 'v', days: 10, daysWanted: 30 },
    ]);
  });

  test('keeps the harvest waiting longer than the crop stands', () => {
    const waits = (earliestOn: string) => [{ plantingId: 'v', earliestOn: day(earliestOn) }];
    expect(groundReady([beans], { ...nothing, waits: waits('2027-08-31') }, rules)).toEqual([]);
    expect(groundReady([beans], { ...nothing, waits: waits('2027-09-02') }, rules)).toEqual([
      { code: 'harvest-waits', plantingId: 'v', earliestOn: '2027-09-02', clearBy: '2027-08-31', daysLate: 2 },
    ]);
  });
});
