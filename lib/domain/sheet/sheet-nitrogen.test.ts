import { describe, expect, it } from 'vitest';
import { plainGround, plainOrder } from '@/tests/fixtures/sheet-orders';
import { calendarDate } from '../calendar/calendar-date';
import { footprint } from '../ground/footprint';
import { sheetNitrogen } from './sheet-nitrogen';

const on = calendarDate('2026-11-09');
const plain = { ...plainOrder, meal: null };
const before = (day: string, nitrogenMgPerM2: number | null, ground = plainGround) => ({
  footprint: ground,
  on: calendarDate(day),
  nitrogenMgPerM2,
});

describe('sheetNitrogen', () => {
  it('is once the guidance at 5 kg/m² of horse manure, and a third of it over three years', () => {
    const nitrogen = sheetNitrogen(plain, plainGround, on, [], 3);
    expect(nitrogen).toMatchObject({ broughtMgPerM2: 25_000, timesYear: 1, besideMgPerM2: 0, isLeast: false });
    expect(nitrogen.timesMean).toBeCloseTo(1 / 3, 4);
    expect(nitrogen.keepsYear?.rateGPerM2).toBe(5000);
    expect(nitrogen.keepsMean?.rateGPerM2).toBe(15_000);
  });

  it('counts the meal, and leaves the manure only the room beside it', () => {
    const nitrogen = sheetNitrogen(plainOrder, plainGround, on, [], 3);
    expect(nitrogen).toMatchObject({ broughtMgPerM2: 25_000 + 9800, besideMgPerM2: 9800 });
    expect(nitrogen.timesYear).toBeCloseTo(34_800 / 25_000, 9);
    expect(nitrogen.keepsYear?.rateGPerM2).toBe(3040);
  });

  it('counts what the same ground had within twelve months, either way, and nothing earlier', () => {
    const times = (day: string) => sheetNitrogen(plain, plainGround, on, [before(day, 10_000)], 3).timesYear;
    expect(times('2025-11-10')).toBeCloseTo(1.4, 9);
    expect(times('2025-11-09')).toBe(1);
    expect(times('2027-11-08')).toBeCloseTo(1.4, 9);
    expect(sheetNitrogen(plain, plainGround, on, [before('2025-11-10', 10_000)], 3).keepsYear?.rateGPerM2).toBe(3000);
  });

  it('is that of the worst ground', () => {
    const half = footprint(60, 200, 120, 180);
    expect(sheetNitrogen(plain, plainGround, on, [before('2026-03-01', 25_000, half)], 3).timesYear).toBe(2);
  });

  it('says that it is the least where something is not known', () => {
    expect(sheetNitrogen(plain, plainGround, on, [before('2026-03-01', null)], 3).isLeast).toBe(true);
    const chip = { ...plain, manure: plain.manure && { ...plain.manure, materialKey: 'wood-chip' } };
    expect(sheetNitrogen(chip, plainGround, on, [], 3)).toMatchObject({
      broughtMgPerM2: null,
      isLeast: true,
      keepsYear: null,
    });
  });

  it('holds the thumb rule against the guidance: half a load a trench is several times over', () => {
    const { thumb } = sheetNitrogen(plain, plainGround, on, [], 3);
    // Half of 85 L × 400 g/L on 0.72 m².
    expect(thumb).toMatchObject({ bottomGPerM2: 23_611, mostGPerM2: 47_222 });
    expect(thumb?.timesBottom).toBeCloseTo(4.72, 2);
    expect(thumb?.timesMost).toBeCloseTo(9.44, 2);
    expect(sheetNitrogen({ ...plain, manure: null }, plainGround, on, [], 3)).toMatchObject({
      thumb: null,
      keepsYear: null,
    });
    expect(sheetNitrogen({ ...plain, layoutBy: 'no-trench' }, plainGround, on, [], 3).thumb).toBeNull();
  });
});
