import { describe, expect, it } from 'vitest';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { makeLargeSociety } from './society';

const size = { plots: 6, beds: 3, seasons: 4 };
const make = (nth: number) => makeLargeSociety(nth, size, '2026-11-25' as CalendarDate, 'a hash');

describe('a society for measuring', () => {
  it('is the same for the same arguments, and another for another number', () => {
    expect(make(1)).toEqual(make(1));
    expect(make(1).Society).not.toEqual(make(2).Society);
  });

  it('has as much of everything as it was asked for', () => {
    const made = make(3);
    expect(made.Plot).toHaveLength(6);
    expect(made.Bed).toHaveLength(6 * 3);
    expect(made.Planting).toHaveLength(6 * 3 * 4);
    expect(made.Delivery?.map(({ state }) => state)).toEqual([...Array(4).fill('collecting'), 'open']);
  });

  it('shares each heap out whole, and leaves credits that sum to zero', () => {
    const made = make(4);
    for (const { id, heapLoads, sharedLoads } of made.Delivery ?? []) {
      const shares =
        made.Booking?.filter(({ deliveryId }) => deliveryId === id).map(({ share }) => Number(share)) ?? [];
      expect(shares.reduce((sum, share) => sum + share, 0)).toBe(sharedLoads);
      if (heapLoads !== null) expect(sharedLoads).toBe(heapLoads);
    }
    const credits = made.CreditEntry?.map(({ changeMillionths }) => Number(changeMillionths)) ?? [];
    expect(credits.reduce((sum, change) => sum + change, 0)).toBe(0);
  });
});
