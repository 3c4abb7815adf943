import { describe, expect, test } from 'vitest';
import { calendarDate } from '@/lib/domain/calendar/calendar-date';
import { lifeDays, storageLivesOf } from '@/lib/domain/catalogue/storage-lives';
import { storageLossesOf } from '@/lib/domain/catalogue/storage-losses';
import { curingClock } from '@/lib/domain/store/curing-clock';
import { lifeDaysAt, lifePosterior } from '@/lib/domain/store/life-posterior';
import { lifePrior } from '@/lib/domain/store/life-prior';
import { soundShare } from '@/lib/domain/store/sound-share';
import { mustNotStandBeside } from '@/lib/domain/store/stand-apart';
import { tooColdFor } from '@/lib/domain/store/too-cold';

// Oregon State University work on eight cultivars at 10 to 15 °C, as quoted by the University of California, Davis, Produce facts:
// pumpkin and winter squash. Life 2 to 6 months: the same fact sheet, in a copy. A middling lot by the production model.
describe('winter squash', () => {
  const middling = lifeDaysAt(lifePosterior(lifePrior('squash', 'sound', 130), []), 0.5);

  test.each([
    [9, 90],
    [15, 70],
    [20, 50],
  ])('after %i weeks %i %% are marketable', (weeks, percent) =>
    expect(Math.abs(100 * soundShare(weeks * 7, middling) - percent)).toBeLessThan(1),
  );
});

// Eight lots of ten of a kind that is kept as its account wants live between the printed ends.
// biome-ignore format: one row of the tables a line
test.each([
  // United States Department of Agriculture, Agriculture Handbook 66, 1954, in a copy: 24 to 26 weeks at 3.3 to 4.4 °C.
  ['potato', 40, 24 * 7, 26 * 7],
  // University of California, Davis, Produce facts: onion, dry: pungent 6 to 9 months, mild half a month to one, at 0 °C.
  ['onion', 0, 183, 274],
  ['onion-mild', 0, 15, 30],
  // Agriculture Handbook 66, as quoted: garlic in a common ventilated store 3 to 4 months.
  ['garlic', 100, 91, 122],
  // Oregon State University (Mansour), in a copy: butternut 2 to 3 months, acorn 1 to 2, hubbard 3 to 6, pumpkin 2 to 3, at 10 to 13 °C.
  ['butternut', 115, 61, 91],
  ['acorn-squash', 115, 30, 61],
  ['hubbard-squash', 115, 91, 183],
  ['pumpkin', 115, 61, 91],
  // University of Massachusetts Extension, Optimal Storage Conditions: carrot 5 to 9 months, parsnip 2 to 6, beet 4 to 6, late cabbage
  // 4 to 6, swede and turnip 4 to 5, at 0 °C.
  ['carrot', 0, 152, 274],
  ['parsnip', 0, 61, 183],
  ['beetroot', 0, 122, 183],
  ['cabbage', 0, 122, 183],
  ['swede', 0, 122, 152],
  ['turnip', 0, 122, 152],
  // New England Vegetable Management Guide, Table 16: leek 1 to 3 months at 0 °C.
  ['leek', 0, 30, 91],
  // Iowa State University Extension: sweet potato 4 to 6 months at 13 to 16 °C; apples 3 to 6 months at −1 to 0 °C.
  ['sweet-potato', 145, 122, 183],
  ['apple', -5, 91, 183],
  // New Mexico State University, Guide H-235, in a copy: fresh chilli 2 to 3 weeks at 7 to 10 °C.
  ['fresh-chilli', 80, 14, 21],
] as const)('%s at %i tenths of a degree: %i to %i days', (key, placeTenthC, least, most) => {
  const belief = lifePosterior(lifePrior(key, 'sound', placeTenthC), []);
  expect(Math.round(lifeDaysAt(belief, 0.1))).toBe(least);
  expect(Math.round(lifeDaysAt(belief, 0.9))).toBe(most);
});

// University of Massachusetts Extension, Optimal Storage Conditions: carrot at 0 °C and 98 to 100 %, late cabbage alike, beet and swede at
// 95 %, parsnip at 90 to 95; University of California, Davis: onion 65 to 70 %, pumpkin and squash 12.5 to 15 °C and 50 to 70 %.
test.each([
  ['carrot', 0, 0, 98, 100],
  ['cabbage', 0, 0, 98, 100],
  ['beetroot', 0, 0, 95, 95],
  ['swede', 0, 0, 95, 95],
  ['parsnip', 0, 0, 90, 95],
  ['onion', 0, 0, 65, 70],
  ['squash', 125, 150, 50, 70],
])('%s wants %i to %i tenths of a degree and %i to %i %% of moisture', (key, fromTenthC, toTenthC, fromRh, toRh) =>
  expect(storageLivesOf(key)[0]).toMatchObject({ fromTenthC, toTenthC, fromRh, toRh }),
);

describe('other accounts stand beside it', () => {
  const printed = (key: string) =>
    storageLivesOf(key).map(({ least, most, printedIn, source }) => [
      source,
      least === null ? null : lifeDays(least, printedIn),
      most === null ? null : lifeDays(most, printedIn),
    ]);

  // M. Cantwell, University of California, Davis, 2001, in a copy; New England Vegetable Management Guide, Table 16.
  test('onions 1 to 8 months', () => {
    expect(printed('onion')).toContainEqual(['cantwell-2001', 30, 243]);
    expect(printed('onion')).toContainEqual(['new-england-16', 30, 243]);
  });

  // University of California, Davis, Produce facts: garlic: over 9 months at −1 to 0 °C, 1 to 2 months at 20 to 30 °C.
  test('garlic in the cold and in a room', () => {
    expect(printed('garlic')).toContainEqual(['ucd-garlic', 274, null]);
    expect(printed('garlic')).toContainEqual(['ucd-garlic', 30, 61]);
  });

  // Iowa State University Extension, 2017: potatoes sprout in 2 to 3 months above 10 °C. Agriculture Handbook 66, 1954: swede 8 to 16 weeks.
  test('potatoes in the warm, swedes for a winter', () => {
    expect(printed('potato')).toContainEqual(['iowa-potato', 61, 91]);
    expect(printed('swede')).toContainEqual(['hb66-1954', 56, 112]);
  });

  // University of Idaho, 2018, as reported: 3 % in the first month, about 5 % by the fifth; Msika and Jackson 1997, in a review:
  // 2 to 5 % a month; Sohany et al. 2016: red onion 23.25 % in 60 days at about 25 °C.
  test('losses of weight', () => {
    expect(storageLossesOf('potato')).toMatchObject([
      { afterDays: 30, mostPermille: 30 },
      { afterDays: 152, mostPermille: 50 },
    ]);
    expect(storageLossesOf('onion')[0]).toMatchObject({
      leastPermille: 20,
      mostPermille: 50,
      of: 'weight in each month',
    });
    expect(storageLossesOf('onion')[1]).toMatchObject({ afterDays: 60, mostPermille: 233 });
  });
});

describe('curing', () => {
  const laidOut = calendarDate('2026-09-01');
  const clock = (key: string) => curingClock(key, laidOut, laidOut);

  // University of Nebraska, CropWatch: potatoes 1 to 3 weeks; Oregon State University: onions 14 to 20 days; University of Delaware,
  // Weekly Crop Update: squash 10 days, sweet potato 5 to 7; Iowa State University (R. Jauron, 2016), in a copy: acorn squash not at all.
  test.each([
    ['potato', '2026-09-08', '2026-09-22'],
    ['onion', '2026-09-15', '2026-09-21'],
    ['squash', '2026-09-11', '2026-09-11'],
    ['sweet-potato', '2026-09-06', '2026-09-08'],
    ['acorn-squash', '2026-09-01', '2026-09-01'],
  ])('%s laid out on 1 September: ready from %s to %s', (key, readyOn, latestOn) =>
    expect(clock(key)).toMatchObject({ readyOn, latestOn }),
  );

  test('acorn squash is not cured', () => expect(clock('acorn-squash')?.state).toBe('not-cured'));
});

describe('what is too cold', () => {
  const codes = (key: string, tenths: number) => tooColdFor(key, tenths).map(({ code, source }) => [code, source]);

  // University of California, Davis: squash and pumpkin below 10 °C, onions sprout at 5 to 25 °C, garlic at 5 to 18; Iowa State
  // University: sweet potato below 13 °C, potatoes sweeten below 4.4 °C; Allotment and Garden Guide, September 1945: marrows never under 45 °F.
  test.each([
    ['squash', 99, 'chills', 'ucd-pumpkin'],
    ['sweet-potato', 129, 'chills', 'iowa-sweet-potato'],
    ['potato', 43, 'sweetens', 'iowa-potato'],
    ['marrow', 71, 'chills', 'allotment-guide-store'],
    ['onion', 50, 'sprouts', 'ucd-onion'],
    ['onion', 249, 'sprouts', 'ucd-onion'],
    ['garlic', 179, 'sprouts', 'ucd-garlic'],
  ])('%s at %i tenths of a degree %s', (key, tenths, code, source) =>
    expect(codes(key, tenths)).toContainEqual([code, source]),
  );

  // Cantwell and ASHRAE, in copies: onion −0.8, garlic −2.0, leek −0.7, apple −1.5, beet −0.9 °C.
  test.each([
    ['onion', -8],
    ['garlic', -20],
    ['leek', -7],
    ['apple', -15],
    ['beetroot', -9],
  ])('%s freezes below %i tenths of a degree', (key, tenths) => {
    expect(codes(key, tenths)).not.toContainEqual(['freezes', 'ashrae-copy']);
    expect(codes(key, tenths - 1)).toContainEqual(['freezes', 'ashrae-copy']);
  });
});

describe('what is not kept together', () => {
  const beside = (one: string, other: string) =>
    mustNotStandBeside([one, other].map((keepingKey) => ({ id: keepingKey, keepingKey, placeId: 'shed' }))).map(
      ({ code, source }) => `${code} ${source}`,
    );

  // University of Massachusetts Extension: carrot and cabbage are highly sensitive to ethylene; Iowa State University, 2017: squash not
  // near apples; University of California, Davis: onions may sprout and rot; Western Australia, DPIRD, Mixed storage: taint, and kept alone.
  test.each([
    ['carrot', 'apple', 'ethylene umass-storage'],
    ['cabbage', 'apple', 'ethylene umass-storage'],
    ['squash', 'pear', 'ethylene iowa-fruit-apart'],
    ['onion', 'apple', 'ethylene ucd-onion'],
    ['potato', 'apple', 'taint dpird-mixed'],
    ['onion', 'carrot', 'alone dpird-mixed'],
    ['potato', 'beetroot', 'alone dpird-mixed'],
    // Kansas State University, root-cellar chart: 50 to 55 °F and 60 to 75 %, against 32 to 40 °F and 90 to 95 %.
    ['squash', 'carrot', 'other-shelf k-state-cellar'],
  ])('%s and %s: %s', (one, other, finding) => expect(beside(one, other)).toContain(finding));

  test.each([
    ['carrot', 'beetroot'],
    ['onion', 'garlic'],
    ['leek', 'parsnip'],
  ])('%s and %s stand on one shelf', (one, other) => expect(beside(one, other)).toEqual([]));
});
