import fc from 'fast-check';
import { expect, test } from 'vitest';
import { joinedGroups } from './joined-groups';

test('numbered in the order of their smallest members', () => {
  expect(joinedGroups(4, [[1, 3]])).toEqual([0, 1, 2, 1]);
  expect(joinedGroups(4, [[3, 0]])).toEqual([0, 1, 2, 0]);
  expect(joinedGroups(0, [])).toEqual([]);
});

test('two things are in one group just where a walk over the pairs leads from one to the other', () => {
  const given = fc
    .integer({ min: 1, max: 15 })
    .chain((count) =>
      fc.tuple(fc.constant(count), fc.array(fc.tuple(fc.nat(count - 1), fc.nat(count - 1)), { maxLength: 20 })),
    );
  fc.assert(
    fc.property(given, ([count, pairs]) => {
      const groups = joinedGroups(count, pairs);
      for (let from = 0; from < count; from++) {
        const reached = new Set([from]);
        for (let round = 0; round < count; round++)
          for (const [one, other] of pairs) {
            if (reached.has(one)) reached.add(other);
            if (reached.has(other)) reached.add(one);
          }
        groups.forEach((group, thing) => expect(group === groups[from]).toBe(reached.has(thing)));
      }
    }),
  );
});
