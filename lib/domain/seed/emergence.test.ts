import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { crops } from '../catalogue/crops';
import { emergence } from './emergence';

describe('seed in the ground', () => {
  it.each([
    ['parsnip', 5, 57, 57],
    ['parsnip', 7, 27, 57],
    ['parsnip', 22, 14, 15],
    ['carrot', 12, 10, 17],
    ['french-bean', 16, 11, 16],
    ['onion', 30, null, 4],
    // The colder column is not printed, or none comes up in it.
    ['carrot', 4.5, 51, null],
    ['cabbage', 10, null, null],
  ] as const)('%s in soil of %d °C: %s to %s days', (crop, soil, leastDays, mostDays) => {
    const key = crop === 'cabbage' ? 'summer-cabbage' : crop;
    expect(emergence(key, soil)).toMatchObject({ code: 'comes-up', leastDays, mostDays });
  });

  it('waits for warmth', () => {
    expect(emergence('french-bean', 15.5)).toMatchObject({ code: 'too-cold', source: 'osu-germination' });
    expect(emergence('french-bean', 15.6)).toMatchObject({ code: 'comes-up' });
    expect(emergence('onion', 1)).toMatchObject({ code: 'too-cold' });
    expect(emergence('sweetcorn', 9.9)).toMatchObject({ code: 'too-cold', leastC: 10 });
  });

  it('is not known of crops that no table names', () => expect(emergence('oca', 12)).toEqual({ code: 'not-known' }));

  it.each([-21, 61, Number.NaN])('is in a soil: %d °C is none', (soil) =>
    expect(() => emergence('onion', soil)).toThrow(RangeError),
  );

  it('comes up in warmer soil once it does, and its least days are never more than its most', () => {
    const soil = fc.double({ min: -5, max: 30, noNaN: true });
    fc.assert(
      fc.property(fc.constantFrom(...crops.map(({ key }) => key)), soil, soil, (key, one, other) => {
        const [cold, warm] = [Math.min(one, other), Math.max(one, other)].map((at) => emergence(key, at));
        if (cold?.code === 'comes-up') expect(warm?.code).toBe('comes-up');
        for (const found of [cold, warm])
          if (found?.code === 'comes-up' && found.leastDays !== null && found.mostDays !== null)
            expect(found.leastDays).toBeLessThanOrEqual(found.mostDays);
      }),
    );
  });
});
