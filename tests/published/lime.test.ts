import { describe, expect, test } from 'vitest';
import { calendarDate } from '@/lib/domain/calendar/calendar-date';
import { limeTargets } from '@/lib/domain/catalogue/lime-tables';
import { limeAndManure, testableFrom } from '@/lib/domain/lime/lime-and-manure';
import { dressingsOf } from '@/lib/domain/lime/lime-dressings';
import { limeByBufferPh, limeByClass, limeNeed } from '@/lib/domain/lime/lime-need';

// South Africa, National Department of Agriculture, Application of lime to soil, 2000: t/ha from pH 4.5 to 5.5 and from
// 5.5 to 6.5.
test.each([
  ['sand', 0.5, 0.75],
  ['sandy-loam', 1.0, 1.5],
  ['loam', 1.5, 2.0],
  ['silt-loam', 2.5, 3.0],
  ['clay-loam', 3.0, 4.0],
] as const)('%s: %s t/ha to pH 5.5, %s t/ha from there to 6.5', (texture, lower, upper) => {
  expect(limeNeed(texture, 45, 55)).toMatchObject({ gPerM2: lower * 100, source: 'za-lime', reasons: [] });
  expect(limeNeed(texture, 55, 65)).toMatchObject({ gPerM2: upper * 100, source: 'za-lime', reasons: [] });
});

// Lime Time, a buying group's page after a farm adviser: rough guide, arable, t/ha by pH, to pH 6.7.
test.each([
  [64, 1.8],
  [63, 2.4],
  [62, 3.0],
  [61, 3.6],
  [60, 4.2],
  [59, 4.8],
  [58, 5.4],
  [57, 6.0],
  [56, 6.6],
  [55, 7.2],
  [54, 7.8],
])('the rough guide, pH %s tenths: %s t/ha', (phTenths, tPerHa) => {
  const account = limeNeed('loam', phTenths, 67).otherwise.find(({ source }) => source === 'uk-lime-guide');
  expect(account).toMatchObject({ mostGPerM2: Math.round(tPerHa * 100), reasons: [] });
});

// The same: above 5 t/ha, over two years. Irish Farmers Monthly, Forage Guide 2018, after Teagasc: at most 7.5 t/ha at
// once.
test('5 t/ha go on at once, 7.8 in two years, and never more than 7.5 at once', () => {
  expect(dressingsOf(500)).toEqual([500]);
  expect(dressingsOf(780)).toEqual([390, 390]);
  expect(dressingsOf(1500)).toEqual([750, 750]);
  expect(dressingsOf(1600)).toHaveLength(3);
});

// Teagasc, M. Plunkett and L. Moloney Finn, Calculating Lime Advice, April 2023: (6.7 − 6.3) × 12.5 = 5.0 t/ha.
test('the buffer formula’s own example: 5.0 t/ha', () => expect(limeByBufferPh(63)).toBe(500));

// IUNG, Poland, Assessment of liming demands, Tables 1 and 2: t CaO/ha by class, very light to heavy; pH in potassium
// chloride.
describe('the Polish classes', () => {
  const soils = ['very-light', 'light', 'medium', 'heavy'] as const;
  test.each([
    ['necessary', [40, 45, 50, 55], [3.0, 3.5, 4.5, 6.0]],
    ['needed', [45, 50, 55, 60], [2.0, 2.5, 3.0, 4.0]],
    ['advisable', [50, 55, 60, 65], [1.0, 2.0, 2.5, 3.0]],
  ])('%s', (need, phs, doses) =>
    soils.forEach((soil, at) =>
      expect(limeByClass(soil, phs[at] ?? 0)).toMatchObject({ need, oxideGPerM2: (doses[at] ?? 0) * 100 }),
    ),
  );
  test('limited, on medium and heavy soil alone', () => {
    expect(limeByClass('medium', 65).oxideGPerM2).toBe(100);
    expect(limeByClass('heavy', 70).oxideGPerM2).toBe(150);
    expect([limeByClass('very-light', 55).need, limeByClass('light', 60).need]).toEqual([null, null]);
  });
  // Molar masses 56.08 and 100.09 g: 3.0 t of CaO are 5.36 t of CaCO3, 536 g/m².
  test('3.0 t CaO/ha are 536 g/m² of limestone', () => expect(limeByClass('medium', 55).carbonateGPerM2).toBe(536));
});

// Defra, Fertiliser Manual (RB209), 8th edition, 2010, Section 5 checklist: pH 6.5; 7.0 where clubroot is a problem;
// 5.8 on peat.
test('targets', () =>
  expect(
    [limeTargets.vegetables, limeTargets.clubroot, limeTargets.peat].map((target) => target?.leastPhTenths),
  ).toEqual([65, 70, 58]));

describe('waits', () => {
  const limed = calendarDate('2026-10-15');
  // Teagasc, It's Time for Lime: after lime, slurry or urea wait three to six months; after slurry, lime waits a week.
  test('lime, then manure', () =>
    expect(
      limeAndManure({ limedOn: limed, manuredOn: calendarDate('2027-04-15') }).waits.map((wait) => wait.earliestOn),
    ).toEqual(['2027-01-15', '2027-04-15']));
  test('a week after slurry', () =>
    expect(limeAndManure({ limedOn: limed, manuredOn: calendarDate('2026-10-08') }).waits[0]).toMatchObject({
      earliestOn: '2026-10-15',
      kept: true,
    }));
  // RHS, Lime and liming: no pH test within three months of lime, fertiliser or organic matter.
  test('a test, three months after', () => expect(testableFrom(limed)).toBe('2027-01-15'));
  // T. Dickerson, RHS adviser, Garden News, 20 November 2018: lime in autumn, manure in spring.
  test('lime in mid-October and manure in March keep their distance', () =>
    expect(limeAndManure({ limedOn: limed, manuredOn: calendarDate('2027-03-01') }).verdict).toBe('ok'));
});
