import { describe, expect, test } from 'vitest';
import { calendarDate } from '@/lib/domain/calendar/calendar-date';
import { bioassayProtocols } from '@/lib/domain/catalogue/bioassay-protocols';
import type { ManureState } from '@/lib/domain/catalogue/harvest-intervals';
import { judgeBioassay } from '@/lib/domain/bioassay/judge-bioassay';
import { earliestHarvest, meetingOf } from '@/lib/domain/food-safety/earliest-harvest';
import { madeByHeat } from '@/lib/domain/food-safety/made-by-heat';
import { celsiusOf } from '@/lib/domain/quantity/temperature';

const ruled = (state: ManureState, cropKey: string, key: string, manuredOn = '2027-01-01') =>
  earliestHarvest(
    { manuredOn: calendarDate(manuredOn), state, monthsHeaped: null, incorporated: true },
    meetingOf(cropKey),
  ).rules.find((rule) => rule.key === key)?.earliestOn;

// United States, National Organic Program, 7 CFR 205.203(c)(1): raw manure worked in at least 120 days before the
// harvest of what touches the soil, 90 days before any other. Worked in on 1 January 2027: 1 May and 1 April.
describe('the organic rule', () => {
  test('120 days where the edible part touches the soil', () =>
    expect(ruled('raw', 'maincrop-potato', 'organic-contact')).toBe('2027-05-01'));
  test('90 days where it does not', () => expect(ruled('raw', 'sweetcorn', 'organic-clear')).toBe('2027-04-01'));
  test('a day earlier in a leap year', () =>
    expect(ruled('raw', 'maincrop-potato', 'organic-contact', '2028-01-01')).toBe('2028-04-30'));
  test('none for compost', () =>
    expect([ruled('composted', 'carrot', 'organic-contact'), ruled('composted', 'sweetcorn', 'organic-clear')]).toEqual(
      [undefined, undefined],
    ));
});

// 7 CFR 205.203(c)(2), confirmed by OMRI: 131 to 170 °F for 3 days in a vessel, or 15 days in a windrow with five
// turnings.
describe('compost by heat', () => {
  test('131 °F is 55.0 °C and 170 °F is 76.7 °C', () => {
    expect(celsiusOf(131)).toBe(55);
    expect(celsiusOf(170)).toBeCloseTo(76.7, 1);
  });
  test('three days in a vessel, fifteen in a windrow turned five times', () => {
    const hot = (days: number) => Array.from({ length: days }, () => celsiusOf(131));
    expect(madeByHeat({ method: 'vessel', dailyCelsius: hot(3), turnings: 0 })).toBe(true);
    expect(madeByHeat({ method: 'windrow', dailyCelsius: hot(15), turnings: 5 })).toBe(true);
    expect(madeByHeat({ method: 'windrow', dailyCelsius: hot(3), turnings: 5 })).toBe(false);
  });
});

// Food Standards Agency, earlier guidance in a Defra summary, crops that are ready to eat: fresh solid manure not
// within six months of harvest, treated or batch-stored not within two.
test('six months for fresh manure and two for treated, on what is eaten raw', () => {
  expect(ruled('raw', 'lettuce', 'food-agency-fresh')).toBe('2027-07-01');
  expect(ruled('composted', 'lettuce', 'food-agency-treated')).toBe('2027-03-01');
  expect(ruled('raw', 'maincrop-potato', 'food-agency-fresh')).toBeUndefined();
});

// Royal Horticultural Society, Alternatives to fertiliser: fresh manure is rotted for a year, above all for raw crops.
test('a year for fresh manure on what is eaten raw; none on top once it is rotted so long', () => {
  expect(ruled('raw', 'lettuce', 'year-of-rot')).toBe('2028-01-01');
  expect(ruled('rotted', 'lettuce', 'year-of-rot')).toBe('2027-01-01');
});

describe('the residue bioassay', () => {
  // North Carolina State University, as relayed: 1:1, three pots and more, controls, three peas or beans a pot, to
  // three sets of true leaves. Oregon State University, as relayed: 2:1, three to six test pots, two to three weeks.
  // Washington, in CalRecycle: 3:1, two to six weeks.
  test('mixes and times of the protocols', () =>
    expect(bioassayProtocols.map((one) => [one.manureParts, one.mixParts, one.fromDay, one.toDay])).toEqual([
      [1, 1, null, null],
      [2, 1, 14, 21],
      [3, 1, 14, 42],
    ]));

  test('three pots of each with three plants and three sets of true leaves are enough; two pots are not', () => {
    const record = (potsOfEach: number) => {
      const pots = (['test', 'control'] as const).flatMap((kind) =>
        Array.from({ length: potsOfEach }, (_, at) => ({ id: `${kind} ${at}`, kind, seeds: 3 })),
      );
      const shown = pots.map(({ id }) => ({ potId: id, up: 3, distorted: 0, trueLeaves: 3 }));
      return {
        sownOn: calendarDate('2027-05-01'),
        manureParts: 1,
        mixParts: 1,
        pots,
        readings: [{ on: calendarDate('2027-05-20'), pots: shown }],
      };
    };
    expect(judgeBioassay(record(3)).verdict).toBe('no-symptoms-seen');
    expect(judgeBioassay(record(2)).verdict).toBe('not-valid');
  });
});
