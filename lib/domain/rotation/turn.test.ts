import { describe, expect, it } from 'vitest';
import { footprint } from '../ground/footprint';
import { turnOf } from './turn';

const ground = footprint(0, 0, 100, 300);
const whole = { ground, planned: [], season: 2027, intervalYears: 3 };

describe('the turn', () => {
  it.each([
    [2024, 30_000],
    [2025, 0],
    [2020, 30_000],
  ])('of ground last manured for %i: %i cm² due for 2027', (season, dueCm2) => {
    expect(turnOf({ ...whole, manurings: [{ footprint: ground, season }] }).dueCm2).toBe(dueCm2);
  });

  it('goes by the latest manuring, by area', () => {
    const manurings = [
      { footprint: ground, season: 2023 },
      { footprint: footprint(0, 0, 100, 100), season: 2026 },
    ];
    expect(turnOf({ ...whole, manurings })).toMatchObject({ dueCm2: 20_000, notDueCm2: 10_000, unloggedCm2: 0 });
  });

  it('is assumed where nothing was logged', () => {
    expect(turnOf({ ...whole, manurings: [] })).toMatchObject({ dueCm2: 0, unloggedCm2: 30_000 });
  });

  it('waits under a crop that takes none', () => {
    const planned = [{ footprint: footprint(0, 0, 100, 120), takesManure: false }];
    const { dueCm2, reasons } = turnOf({ ...whole, planned, manurings: [{ footprint: ground, season: 2020 }] });
    expect(dueCm2).toBe(18_000);
    expect(reasons).toContainEqual({ code: 'crop-takes-none', areaCm2: 12_000 });
  });

  it('refuses an interval below a year', () => {
    expect(() => turnOf({ ...whole, manurings: [], intervalYears: 0 })).toThrow(RangeError);
  });
});
