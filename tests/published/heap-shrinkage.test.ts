import { describe, expect, it } from 'vitest';
import { leftOnHeap } from '@/lib/domain/delivery/left-on-heap';

// Of a hundred loads, so that a loss in percent is a number of loads.
const stable = (ageMonths: number) => leftOnHeap({ loads: 100, days: 100, kind: 'manure', ageMonths });

describe('how a heap of manure shrinks', () => {
  // Saskatchewan Agriculture (publisher inferred from a copy), Composting Solid Manure, reviewed December 2008: composting takes
  // 50 to 70 % of the volume. L. Chen, University of Idaho, trade article: 30 to 50 % for dairy manure. Fresh manure of either kind lies between.
  it('keeps all that Saskatchewan and Idaho found within its range, and ends where they end', () => {
    const { leastLoads, mostLoads } = stable(0);
    for (const lossPercent of [30, 50, 70]) {
      expect(leastLoads).toBeLessThanOrEqual(100 - lossPercent);
      expect(mostLoads).toBeGreaterThanOrEqual(100 - lossPercent);
    }
    expect([leastLoads, mostLoads]).toEqual([100 - 70, 100 - 30]);
  });

  // Michel et al., American Society of Agricultural Engineers, Paper 044030, 2004, abstract: windrows of bedded dairy manure were stable after 100 days.
  it('goes on until the hundredth day of Michel et al., and no further', () => {
    const on = (days: number) => leftOnHeap({ loads: 1000, days, kind: 'manure', ageMonths: 0 });
    expect(on(99).leastLoads).toBeGreaterThan(on(100).leastLoads);
    expect(on(1000)).toEqual(on(100));
  });
});
