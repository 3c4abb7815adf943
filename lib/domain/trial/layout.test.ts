import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { canonicalBlocks, type Joined, layout, trialSeed } from './layout';

const bytesHex = '00'.repeat(32);
const blocks: readonly Joined[] = [
  { id: 'b', first: 'b1', second: 'b2' },
  { id: 'a', first: 'a1', second: 'a2' },
];

describe('what was joined as one text', () => {
  test('sorted by id, one line each', () => expect(canonicalBlocks('t1', blocks)).toBe('t1\na:a1:a2\nb:b1:b2\n'));
  test('no blocks', () => expect(canonicalBlocks('t1', [])).toBe('t1\n'));
  test.each(['a:1', 'a\n', ''])('an id that could be read two ways is refused: %j', (id) => {
    expect(() => canonicalBlocks(id, [])).toThrow(RangeError);
    expect(() => canonicalBlocks('t1', [{ id, first: 'x', second: 'y' }])).toThrow(RangeError);
    expect(() => canonicalBlocks('t1', [{ id: 'c', first: 'x', second: id }])).toThrow(RangeError);
  });
  test('an id that stands twice is refused', () => {
    expect(() => canonicalBlocks('t1', [{ id: 'c', first: 'x', second: 'x' }])).toThrow(RangeError);
    expect(() => layout('5eed', [...blocks, ...blocks])).toThrow(RangeError);
  });
});

describe('the layout', () => {
  // `{ head -c 32 /dev/zero; printf 't1\na:a1:a2\nb:b1:b2\n'; } | sha256sum`, then `printf '<seed>:a' | sha256sum`, of GNU coreutils.
  test('of a seed that was worked out by another program', () => {
    const seed = trialSeed({ bytesHex, trialId: 't1', blocks });
    expect(seed).toBe('d8973b3b6daef4f6752b7a933a664bd383f6707ac2bba100454b2994bdb39d0c');
    expect(layout(seed, blocks).map(({ id, rank, a }) => [id, rank, a])).toEqual([
      ['a', '3fa83fb50514d986fcc4f9abd004c73456065046d05af2f96dd4d620583f9f12', 'a1'],
      ['b', 'b9a13541822acfef5050435ffc592caa1b24f66a849ad1bc2d32ddf9e968da72', 'b1'],
    ]);
  });
  test('changes with any byte, any piece of ground, and the trial', () => {
    const [one, ...rest] = blocks;
    const turned = one ? [{ ...one, first: one.second, second: one.first }, ...rest] : [];
    const seeds = [
      trialSeed({ bytesHex, trialId: 't1', blocks }),
      trialSeed({ bytesHex: `${'00'.repeat(31)}01`, trialId: 't1', blocks }),
      trialSeed({ bytesHex, trialId: 't2', blocks }),
      trialSeed({ bytesHex, trialId: 't1', blocks: rest }),
      trialSeed({ bytesHex, trialId: 't1', blocks: turned }),
    ];
    expect(new Set(seeds).size).toBe(seeds.length);
  });

  const joined = fc
    .uniqueArray(fc.uuid(), { minLength: 1, maxLength: 20 })
    .map((ids) => ids.map((id): Joined => ({ id, first: `${id}-1`, second: `${id}-2` })));
  const hex = fc.uint8Array({ minLength: 32, maxLength: 32 }).map((bytes) => Buffer.from(bytes).toString('hex'));

  test('gives each block each treatment once, and numbers them from 1', () =>
    fc.assert(
      fc.property(hex, joined, (seed, all) => {
        const laid = layout(seed, all);
        expect(laid.map(({ number }) => number)).toEqual(all.map((_, at) => at + 1));
        for (const { id, a, b } of laid) {
          const block = all.find((one) => one.id === id);
          expect([a, b].sort()).toEqual([block?.first, block?.second]);
        }
      }),
    ));

  test('hangs on nothing but the seed and the blocks: the order of joining changes nothing', () =>
    fc.assert(
      fc.property(
        hex,
        joined.chain((all) =>
          fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length, maxLength: all.length })),
        ),
        (bytes, [all, shuffled]) => {
          const seedOf = (these: readonly Joined[]) => trialSeed({ bytesHex: bytes, trialId: 't', blocks: these });
          expect(seedOf(shuffled)).toBe(seedOf(all));
          expect(layout(seedOf(shuffled), Object.freeze(shuffled))).toEqual(layout(seedOf(all), all));
        },
      ),
    ));

  test('a block’s coin hangs on itself alone: who else joined turns it only through the seed', () =>
    fc.assert(
      fc.property(hex, joined, (seed, all) => {
        const [alone] = layout(seed, all.slice(0, 1));
        expect(layout(seed, all).find(({ id }) => id === alone?.id)?.a).toBe(alone?.a);
      }),
    ));
});

describe('over many seeds', () => {
  const seeds = Array.from({ length: 4000 }, (_, at) =>
    trialSeed({ bytesHex: at.toString(16).padStart(64, '0'), trialId: 't', blocks: three() }),
  );
  const patterns = seeds.map((seed) => {
    const laid = layout(seed, three());
    return three().map(({ id, first }) => (laid.find((one) => one.id === id)?.a === first ? 'A' : 'B'));
  });

  test.each([0, 1, 2])('A comes first in about half: block %i', (at) => {
    const first = patterns.filter((pattern) => pattern[at] === 'A').length;
    // The square of what one degree of freedom passes in one case of a thousand.
    expect((first - 2000) ** 2 / 1000).toBeLessThan(10.83);
  });

  test('each of the eight layouts of three blocks is as likely as any', () => {
    const counts = new Map<string, number>();
    for (const pattern of patterns) counts.set(pattern.join(''), (counts.get(pattern.join('')) ?? 0) + 1);
    const chiSquare = [...counts.values()].reduce((sum, count) => sum + (count - 500) ** 2 / 500, 0);
    expect(counts.size).toBe(8);
    // Seven degrees of freedom, one case of a thousand.
    expect(chiSquare).toBeLessThan(24.32);
  });
});

function three(): Joined[] {
  return ['x', 'y', 'z'].map((id) => ({ id, first: `${id}1`, second: `${id}2` }));
}
