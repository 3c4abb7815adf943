import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Claim } from './claim';
import { queueOf } from './queue';
import { settle } from './settle';
import { shareOut } from './share-out';

const credit = fc.integer({ min: -2, max: 2 }).map((halves) => halves * 500_000);
const row = fc.record({ asked: fc.nat(6), need: fc.nat(6), creditMillionths: credit });
const timely = fc.array(row, { maxLength: 8 }).map((rows) => rows.map((one, at): Claim => ({ ...one, id: `t${at}` })));
// Their ids say nothing of the order in which they came.
const late = fc
  .array(row, { maxLength: 6 })
  .chain((rows) => fc.tuple(fc.constant(rows), fc.shuffledSubarray([...rows.keys()], { minLength: rows.length })))
  .map(([rows, order]) => rows.map((one, at): Claim => ({ ...one, id: `l${at}`, late: order[at] ?? 0 })));
const lotSeed = fc.nat(0xffff).map((seed) => seed.toString(16));
const loads = fc.nat(80);
const given = fc.record({ loads, timely, late, lotSeed });

const total = (numbers: readonly number[]) => numbers.reduce((sum, value) => sum + value, 0);

/** What is left over goes round among the late as they came, load by load, the slow and obvious way. */
function slowLate(spare: number, claims: readonly Claim[]): Map<string, number> {
  const given = new Map(claims.map(({ id }) => [id, 0]));
  const order = [...claims].sort((a, b) => (a.late ?? 0) - (b.late ?? 0));
  for (let left = spare; left > 0; ) {
    const before = left;
    for (const { id, asked } of order)
      if (left > 0 && (given.get(id) ?? 0) < asked) {
        given.set(id, (given.get(id) ?? 0) + 1);
        left -= 1;
      }
    if (left === before) break;
  }
  return given;
}

test('the late share what is left over as they came, and cost nobody who was in time anything', () => {
  fc.assert(
    fc.property(given, ({ loads: heap, timely: inTime, late: after, lotSeed: seed }) => {
      const without = shareOut({ loads: heap, claims: inTime, lotSeed: seed });
      const { shares, lotOrder } = shareOut({ loads: heap, claims: [...inTime, ...after], lotSeed: seed });
      const plain = ({ id, share, dueMillionths, creditAfterMillionths }: (typeof shares)[number]) => ({
        ...{ id, share, dueMillionths, creditAfterMillionths },
      });
      expect(shares.slice(0, inTime.length).map(plain)).toEqual(without.shares.map(plain));
      expect(lotOrder).toEqual(without.lotOrder);
      const spare = heap - total(without.shares.map(({ share }) => share));
      const slow = slowLate(spare, after);
      for (const { id, share } of shares.slice(inTime.length)) expect(share).toBe(slow.get(id));
    }),
    { numRuns: 400 },
  );
});

test('no credit of theirs changes', () => {
  fc.assert(
    fc.property(given, ({ loads: heap, timely: inTime, late: after, lotSeed: seed }) => {
      const credits = new Map(after.map(({ id, creditMillionths }) => [id, creditMillionths]));
      const { shares } = shareOut({ loads: heap, claims: [...inTime, ...after], lotSeed: seed });
      for (const { id, creditAfterMillionths } of shares)
        if (credits.has(id)) expect(creditAfterMillionths).toBe(credits.get(id));
    }),
  );
});

test('the queue as it is printed has them last, and its first places are the shares', () => {
  fc.assert(
    fc.property(given, ({ loads: heap, timely: inTime, late: after, lotSeed: seed }) => {
      const claims = [...inTime, ...after];
      const printed = queueOf(claims, seed, heap);
      for (const { id, share } of shareOut({ loads: heap, claims, lotSeed: seed }).shares)
        expect(printed.filter((place) => place.id === id)).toHaveLength(share);
      const stages = printed.map(({ stage }) => stage);
      expect(stages).toEqual(['needs', 'wants', 'late'].flatMap((one) => stages.filter((stage) => stage === one)));
    }),
  );
});

test('one load more costs nobody a load, whatever was collected; and the order of the list changes nothing', () => {
  const taken = fc.infiniteStream(fc.constantFrom(0, 0, 1, 3, 7));
  fc.assert(
    fc.property(given, taken, fc.nat(20), ({ timely: inTime, late: after, lotSeed: seed }, taking, rest) => {
      const claims = [...inTime, ...after].map((claim) => ({ ...claim, collected: taking.next().value ?? 0 }));
      const heap = rest + total(claims.map(({ collected }) => collected));
      const byId = (count: number, list: readonly Claim[]) =>
        new Map(shareOut({ loads: count, claims: list, lotSeed: seed }).shares.map((share) => [share.id, share]));
      const more = byId(heap + 1, claims);
      const wanted = total(claims.map(({ asked, collected }) => Math.max(asked, collected)));
      const shares = byId(heap, claims);
      for (const [id, { share }] of shares) expect(more.get(id)?.share).toBeGreaterThanOrEqual(share);
      expect(total([...shares.values()].map(({ share }) => share))).toBe(Math.min(heap, wanted));
      expect(byId(heap, claims.toReversed())).toEqual(shares);
      const { changes, lapsedMillionths } = settle({ loads: heap, claims, lotSeed: seed });
      expect(total(changes.map(({ changeMillionths }) => changeMillionths)) + lapsedMillionths).toBe(0);
    }),
  );
});

test('whoever came late neither owes nor is owed for what others take, or for who comes after them', () => {
  const timely = { id: 'timely', asked: 5, need: 5, creditMillionths: 0 };
  const first = { id: 'first', asked: 5, need: 0, creditMillionths: 0, late: 0 };
  const changesOn = (loads: number, claims: readonly (Claim & { readonly collected: number })[]) =>
    settle({ loads, claims, lotSeed: '5eed' });
  // Another joins behind one who has collected.
  const joined = changesOn(8, [
    { ...timely, collected: 5 },
    { ...first, asked: 3, collected: 3 },
    { ...first, id: 'second', asked: 3, late: 1, collected: 0 },
  ]);
  expect(joined.changes.map(({ changeMillionths }) => changeMillionths)).toEqual([0, 0, 0]);
  // Somebody in time takes two beyond their share.
  const beyond = changesOn(10, [
    { ...timely, collected: 7 },
    { ...first, collected: 3 },
  ]);
  expect(beyond.changes.map(({ changeMillionths }) => changeMillionths)).toEqual([-2_000_000, 0]);
  // The heap turns out smaller when the late one has theirs already: what was due to who was in time is owed to them.
  const shorter = changesOn(6, [
    { ...timely, asked: 6, need: 6, collected: 3 },
    { ...first, asked: 3, collected: 3 },
  ]);
  expect(shorter).toMatchObject({ lapsedMillionths: 0 });
  expect(shorter.changes.map(({ changeMillionths }) => changeMillionths)).toEqual([3_000_000, -3_000_000]);
});

test('each is told why', () => {
  const claims = [
    { id: 'timely', asked: 2, need: 1, creditMillionths: 0 },
    { id: 'first', asked: 2, need: 2, creditMillionths: 0, late: 0 },
    { id: 'second', asked: 3, need: 0, creditMillionths: 500_000, late: 1 },
  ];
  const reasonsOn = (heap: number) =>
    shareOut({ loads: heap, claims, lotSeed: '5eed' }).shares.map(({ share, reason }) => [share, reason]);
  expect(reasonsOn(1)).toEqual([
    [1, { code: 'needs-first', needMet: true }],
    [0, { code: 'late-none' }],
    [0, { code: 'late-none' }],
  ]);
  const lastLoad = { level: 1, left: 1, contenders: 2 };
  expect(reasonsOn(5)).toEqual([
    [2, { code: 'met-in-full' }],
    [2, { code: 'late-turn', ...lastLoad }],
    [1, { code: 'late-missed', ...lastLoad }],
  ]);
  expect(reasonsOn(4)).toEqual([
    [2, { code: 'met-in-full' }],
    [1, { code: 'late-level', level: 1 }],
    [1, { code: 'late-level', level: 1 }],
  ]);
  expect(reasonsOn(7).map(([, reason]) => reason)).toEqual(claims.map(() => ({ code: 'met-in-full' })));
});

test('two cannot have come at one place, nor anybody at half a one', () => {
  const claim = { asked: 1, need: 0, creditMillionths: 0 };
  const at = (...places: number[]) => places.map((place, nth): Claim => ({ ...claim, id: String(nth), late: place }));
  expect(() => shareOut({ loads: 1, claims: at(1, 1), lotSeed: '5eed' })).toThrow(RangeError);
  expect(() => shareOut({ loads: 1, claims: at(0.5), lotSeed: '5eed' })).toThrow(RangeError);
});
