import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { withWanted } from './with-wanted';

const onion = (areaCm2: number) => ({ key: 'onion', areaCm2, group: 'alliums' });
const at = (key: string, areaCm2: number) => ({ key, areaCm2 });

describe('the ground that one crop wants, in a course', () => {
  it.each([
    [
      'comes out of its group’s',
      [at('roots', 50), at('alliums', 100)],
      [at('roots', 50), at('onion', 40), at('alliums', 60)],
    ],
    [
      'takes the place of a group that has no more',
      [at('alliums', 40), at('roots', 50)],
      [at('onion', 40), at('roots', 50)],
    ],
    ['leaves a group without an area as it is', [at('alliums', 0)], [at('onion', 40), at('alliums', 0)]],
    [
      'is set where the crop is wanted already',
      [at('alliums', 100), at('onion', 70)],
      [at('alliums', 100), at('onion', 40)],
    ],
    ['comes last where its group is not wanted', [at('roots', 50)], [at('roots', 50), at('onion', 40)]],
    ['is all there is where nothing else is wanted', [], [at('onion', 40)]],
  ])('%s', (_, wanted, found) => {
    const before = structuredClone(wanted);
    expect(withWanted(wanted, onion(40))).toEqual(found);
    expect(wanted).toEqual(before);
  });

  it.each([0, -1, 1.5, Number.NaN])('is none of %s', (areaCm2) =>
    expect(() => withWanted([], onion(areaCm2))).toThrow(RangeError),
  );

  it('is there exactly once, and asks no more of the whole than before while its group has enough', () => {
    const rows = fc.uniqueArray(
      fc.record({ key: fc.constantFrom('roots', 'alliums', 'leek', 'kale'), areaCm2: fc.nat(500) }),
      {
        selector: ({ key }) => key,
      },
    );
    const sum = (list: readonly { areaCm2: number }[]) => list.reduce((total, { areaCm2 }) => total + areaCm2, 0);
    fc.assert(
      fc.property(rows, fc.integer({ min: 1, max: 500 }), (wanted, areaCm2) => {
        const found = withWanted(wanted, onion(areaCm2));
        expect(found.filter(({ key }) => key === 'onion')).toEqual([at('onion', areaCm2)]);
        const group = wanted.find(({ key }) => key === 'alliums')?.areaCm2 ?? 0;
        if (group >= areaCm2) expect(sum(found)).toBe(sum(wanted));
        for (const { key } of found) expect(['onion', ...wanted.map((one) => one.key)]).toContain(key);
      }),
    );
  });
});
