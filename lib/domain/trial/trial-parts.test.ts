import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { CalendarDate } from '../calendar/calendar-date';
import { areaCm2, footprint, overlap } from '../ground/footprint';
import { fromHarvests } from './from-harvests';
import { pieceOfBed } from './piece-of-bed';
import { showsFrom } from './shows-from';
import { trialState } from './trial-state';

describe('pieces of a bed', () => {
  test('an odd centimetre is the first half’s', () => {
    const bed = footprint(10, 20, 120, 361);
    expect(pieceOfBed(bed, 'whole')).toEqual(bed);
    expect(pieceOfBed(bed, 'first')).toEqual(footprint(10, 20, 120, 181));
    expect(pieceOfBed(bed, 'second')).toEqual(footprint(10, 201, 120, 180));
  });
  test('of a bed that can’t be halved there are none', () =>
    expect(() => pieceOfBed(footprint(0, 0, 120, 1), 'second')).toThrow(RangeError));
  test('the halves cover the bed and don’t overlap', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 900 }), fc.integer({ min: 2, max: 3000 }), (width, length) => {
        const bed = footprint(5, 7, width, length);
        const [one, other] = [pieceOfBed(bed, 'first'), pieceOfBed(bed, 'second')];
        expect(areaCm2(one) + areaCm2(other)).toBe(areaCm2(bed));
        expect(overlap(one, other)).toBeNull();
        expect([overlap(one, bed), overlap(other, bed)]).toEqual([one, other]);
      }),
    ));
});

describe('from harvests', () => {
  const ground = footprint(0, 0, 200, 300);
  const on = (lengthCm: number, amounts: number[], yCm = 0) => ({
    footprint: footprint(0, yCm, 200, lengthCm),
    amounts,
  });
  test('the sum of what was picked there, off the ground that it was picked from', () =>
    expect(fromHarvests(ground, [on(100, [2000, 1000]), on(100, [500], 100), on(100, [], 200)])).toEqual({
      is: 'found',
      amount: 3500,
      areaCm2: 40_000,
      harvests: 3,
    }));
  test('a failed crop gave nothing, which is something', () =>
    expect(fromHarvests(ground, [on(300, [0])])).toMatchObject({ is: 'found', amount: 0, areaCm2: 60_000 }));
  test.each([
    ['nothing stands there', []],
    ['nothing was picked', [on(300, [])]],
    ['it stands elsewhere', [on(100, [900], 300)]],
  ])('none where %s', (_, plantings) => expect(fromHarvests(ground, plantings)).toEqual({ is: 'none' }));
  test('what reaches beyond can’t be told apart', () => {
    expect(fromHarvests(ground, [on(301, [900])])).toEqual({ is: 'reaches-beyond' });
    expect(fromHarvests(ground, [on(100, [900]), on(100, [900], 250)])).toEqual({ is: 'reaches-beyond' });
    expect(fromHarvests(ground, [on(100, [900]), on(100, [], 250)]).is).toBe('found');
  });
});

describe('what so few could show', () => {
  // t of 0.975 over the root of the number, from printed tables: 4.303, 2.262 and 2.093.
  test.each([
    [3, 4.303 / Math.sqrt(3)],
    [10, 2.262 / Math.sqrt(10)],
    [20, 2.093 / Math.sqrt(20)],
  ])('%i plots', (plots, spreads) => expect(showsFrom(plots)).toBeCloseTo(spreads, 3));
  test('more plots show less', () => {
    for (let plots = 2; plots < 60; plots++) expect(showsFrom(plots + 1)).toBeLessThan(showsFrom(plots));
  });
  test.each([1, 0, 2.5, Number.NaN])('%s plots are refused', (plots) => {
    expect(() => showsFrom(plots)).toThrow(RangeError);
  });
});

describe('where a trial stands', () => {
  const day = (text: string) => text as CalendarDate;
  const facts = {
    joinByOn: day('2027-03-01'),
    resultsByOn: day('2027-09-30'),
    isLaidOut: false,
    isCalledOff: false,
    isTooFew: false,
  };
  const laid = { ...facts, isLaidOut: true };
  test.each([
    ['joining', facts, '2027-03-01', false],
    ['drawing', facts, '2027-03-02', false],
    ['running', laid, '2027-03-02', false],
    ['running', laid, '2027-09-30', false],
    ['reported', laid, '2027-10-01', false],
    ['reported', laid, '2027-08-01', true],
    ['called-off', { ...laid, isCalledOff: true }, '2027-10-01', true],
    ['too-few', { ...facts, isCalledOff: true, isTooFew: true }, '2027-03-02', false],
  ] as const)('%s', (state, given, today, isAllIn) => expect(trialState(given, day(today), isAllIn)).toBe(state));
});
