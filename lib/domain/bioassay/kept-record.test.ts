import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { addDays, calendarDate } from '../calendar/calendar-date';
import { type EnteredReading, type KeptBioassay, recordThatStands } from './kept-record';

const first = calendarDate('2026-05-08');
const pots = [{ id: 'manure-1', kind: 'test' as const, seeds: 3 }];
const kept = (entered: readonly EnteredReading[]): KeptBioassay => ({
  sownOn: calendarDate('2026-05-01'),
  manureParts: 1,
  mixParts: 1,
  pots,
  entered,
});
const entry = (day: number, up: number, replaces: number | null = null): EnteredReading => ({
  on: addDays(first, day),
  pots: [{ potId: 'manure-1', up, distorted: 0, trueLeaves: 0 }],
  replaces: replaces === null ? null : addDays(first, replaces),
});
const said = (entered: readonly EnteredReading[]) =>
  recordThatStands(kept(entered)).readings.map(({ on, pots: read }) => [on, read[0]?.up]);

describe('the record that stands', () => {
  it('is empty before anything is read, and holds nothing beside the record', () => {
    expect(recordThatStands(kept([]))).toEqual({
      sownOn: '2026-05-01',
      manureParts: 1,
      mixParts: 1,
      pots,
      readings: [],
    });
  });

  it('stands in the order of days, however it was entered', () => {
    expect(said([entry(7, 2), entry(0, 1)])).toEqual([
      ['2026-05-08', 1],
      ['2026-05-15', 2],
    ]);
  });

  it('takes a correction for what it corrects, on the same day or another', () => {
    expect(said([entry(0, 1), entry(0, 3, 0)])).toEqual([['2026-05-08', 3]]);
    expect(said([entry(0, 1), entry(1, 3, 0)])).toEqual([['2026-05-09', 3]]);
    expect(said([entry(0, 1), entry(1, 3, 0), entry(1, 2, 1)])).toEqual([['2026-05-09', 2]]);
  });

  it('changes nothing of what is kept', () => {
    const entered = [entry(7, 2), entry(0, 1, 7)];
    const before = structuredClone(entered);
    recordThatStands(kept(entered));
    expect(entered).toEqual(before);
  });

  it('holds each day once, and as it was entered last', () => {
    const days = fc.array(fc.record({ day: fc.nat(28), up: fc.nat(3), replaces: fc.option(fc.nat(28)) }));
    fc.assert(
      fc.property(days, (typed) => {
        const entered = typed.map(({ day, up, replaces }) => entry(day, up, replaces));
        const slowly: [string, number | undefined][] = [];
        for (let day = 0; day <= 28; day++) {
          const on = addDays(first, day);
          const at = entered.findLastIndex((one) => one.on === on);
          const gone = entered.slice(at + 1).some(({ replaces }) => replaces === on);
          if (at >= 0 && !gone) slowly.push([on, entered[at]?.pots[0]?.up]);
        }
        expect(said(entered)).toEqual(slowly);
      }),
    );
  });
});
