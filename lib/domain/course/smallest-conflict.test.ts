import fc from 'fast-check';
import { expect, it } from 'vitest';
import { smallestConflict } from './smallest-conflict';

/** Run the search against sets that are impossible together. */
function search(count: number, clashes: readonly (readonly number[])[]): readonly number[] | null {
  const run = smallestConflict(count);
  let step = run.next();
  while (!step.done) {
    const asked = step.value;
    step = run.next(!clashes.some((clash) => clash.every((wish) => asked.includes(wish))));
  }
  return step.value;
}

it('finds nothing where all wishes can be met', () => expect(search(4, [])).toBeNull());

it('finds the pair and not the three', () =>
  expect(
    search(5, [
      [0, 1, 2],
      [3, 4],
    ]),
  ).toEqual([3, 4]));

it('finds a wish that is impossible by itself', () => expect(search(3, [[0, 1], [2]])).toEqual([2]));

it('is always a smallest one, by trying every set', () => {
  const clash = fc.uniqueArray(fc.nat(6), { minLength: 1, maxLength: 4 });
  fc.assert(
    fc.property(fc.array(clash, { minLength: 1, maxLength: 6 }), (clashes) => {
      const found = search(7, clashes) ?? [];
      expect(clashes.some((one) => one.every((wish) => found.includes(wish)))).toBe(true);
      expect(found).toHaveLength(Math.min(...clashes.map((one) => one.length)));
    }),
  );
});
