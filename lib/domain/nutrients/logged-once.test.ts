import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { areaCm2, footprint } from '../ground/footprint';
import { loggedOnce } from './logged-once';

const bed = footprint(0, 0, 200, 300);
const collected = {
  id: 'collected',
  kind: 'manured' as const,
  season: 2027,
  footprint: bed,
  massG: 60_000 as number | null,
  deliveryId: 'load' as string | null,
};
const dug = { ...collected, id: 'dug', deliveryId: null, massG: 30_000, footprint: footprint(0, 0, 200, 150) };

describe('loggedOnce', () => {
  it('lets what was collected give way to what was dug in, on the ground they share', () =>
    expect(loggedOnce([collected, dug])).toEqual([
      { ...collected, footprint: footprint(0, 150, 200, 150), massG: 30_000 },
      dug,
    ]));

  it('drops it where all of its ground was dug', () =>
    expect(loggedOnce([collected, { ...dug, footprint: bed }])).toEqual([{ ...dug, footprint: bed }]));

  it('leaves it to other seasons, other kinds of work and other deliveries', () => {
    const others = [
      { ...dug, season: 2026 },
      { ...dug, kind: 'fed' as const },
      { ...dug, deliveryId: 'other' },
    ];
    for (const other of others) expect(loggedOnce([collected, other])).toEqual([collected, other]);
  });

  it('goes round a hole in pieces of their own names, and leaves an unknown weight unknown', () => {
    const hole = { ...dug, footprint: footprint(50, 50, 100, 100) };
    const pieces = loggedOnce([{ ...collected, massG: null }, hole]).slice(0, -1);
    expect(new Set(pieces.map(({ id }) => id)).size).toBe(4);
    expect(pieces.map(({ massG }) => massG)).toEqual([null, null, null, null]);
  });

  it('keeps the weight of the ground that is left, to the gram', () =>
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 300 }), fc.nat(200_000), (lengthCm, massG) => {
        const works = [
          { ...collected, massG },
          { ...dug, footprint: { ...bed, lengthCm } },
        ];
        const left = loggedOnce(works).filter(({ deliveryId }) => deliveryId);
        const area = left.reduce((sum, one) => sum + areaCm2(one.footprint), 0);
        expect(area).toBe(areaCm2(bed) - 200 * lengthCm);
        expect(left.reduce((sum, one) => sum + (one.massG ?? 0), 0)).toBe(Math.round((massG * area) / areaCm2(bed)));
      }),
    ));
});
