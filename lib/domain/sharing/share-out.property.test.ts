import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Claim } from './claim';
import { queueOf } from './queue';
import { shareOut } from './share-out';

type Counted = Claim & { readonly collected: number };

const credit = fc.integer({ min: -2, max: 2 }).map((halves) => halves * 500_000);
const booked = fc
  .uniqueArray(fc.record({ id: fc.uuid(), asked: fc.nat(9), need: fc.nat(9), creditMillionths: credit }), {
    selector: ({ id }) => id,
    maxLength: 12,
  })
  .map((claims): Claim[] => claims);
const loads = fc.nat(70);
const lotSeed = fc.integer({ min: 0, max: 0xffff }).map((seed) => seed.toString(16));

/** Claims some of which have collected already, and a heap that held it. */
const underWay = fc
  .tuple(booked, fc.infiniteStream(fc.constantFrom(0, 0, 1, 3, 11)), fc.nat(40))
  .map(([claims, taken, rest]) => {
    const counted = claims.map((claim): Counted => ({ ...claim, collected: taken.next().value ?? 0 }));
    return { claims: counted, loads: rest + counted.reduce((sum, { collected }) => sum + collected, 0) };
  });

/** The queue of the rule written out in full, one load a place, the slow and obvious way. */
function wholeQueue(claims: readonly Claim[], seed: string): { id: string; stage: string; round: number }[] {
  const rank = (id: string) => createHash('sha256').update(`${seed}:${id}`).digest('hex');
  const order = [...claims].sort(
    (a, b) => b.creditMillionths - a.creditMillionths || rank(a.id).localeCompare(rank(b.id)),
  );
  const queue: { id: string; stage: string; round: number }[] = [];
  const most = Math.max(0, ...claims.map(({ asked }) => asked));
  for (let round = 1; round <= most; round++)
    for (const { id, asked, need } of order)
      if (Math.min(asked, need) >= round) queue.push({ id, stage: 'needs', round });
  for (let round = 1; round <= most; round++)
    for (const { id, asked, need } of order)
      if (asked - Math.min(asked, need) >= round) queue.push({ id, stage: 'wants', round });
  return queue;
}

/** Walk the whole queue, load by load, until the next place would need a load that is not there. */
function slowShares(heap: number, claims: readonly Claim[], seed: string): Map<string, number> {
  const places = new Map(claims.map(({ id }) => [id, 0]));
  const collected = new Map(claims.map((claim) => [claim.id, claim.collected ?? 0]));
  const taken = () => [...places].reduce((sum, [id, count]) => sum + Math.max(count, collected.get(id) ?? 0), 0);
  for (const { id } of wholeQueue(claims, seed)) {
    const before = places.get(id) ?? 0;
    places.set(id, before + 1);
    if (taken() <= heap) continue;
    places.set(id, before);
    break;
  }
  return new Map([...places].map(([id, count]) => [id, Math.max(count, collected.get(id) ?? 0)]));
}

/** What each was due in the queue, in millionths, to within the one that a leftover may add. */
function slowDues(heap: number, claims: readonly Claim[], seed: string): Map<string, number> {
  const queue = wholeQueue(claims, seed);
  const next = queue[heap];
  const inRound = (place: { stage: string; round: number }) =>
    place.stage === next?.stage && place.round === next.round;
  const whole = queue.slice(0, heap).filter((place) => !inRound(place));
  const contenders = queue.filter(inRound);
  const part = ((Math.min(heap, queue.length) - whole.length) / contenders.length) * 1_000_000;
  const count = (list: readonly { id: string }[], wanted: string) => list.filter(({ id }) => id === wanted).length;
  return new Map(claims.map(({ id }) => [id, count(whole, id) * 1_000_000 + (count(contenders, id) ? part : 0)]));
}

const total = (numbers: readonly number[]) => numbers.reduce((sum, value) => sum + value, 0);
const byId = (heap: number, claims: readonly Claim[], seed: string) =>
  new Map(shareOut({ loads: heap, claims, lotSeed: seed }).shares.map((share) => [share.id, share]));

test('agrees with the queue written out in full', () => {
  fc.assert(
    fc.property(loads, booked, lotSeed, (heap, claims, seed) => {
      const { shares } = shareOut({ loads: heap, claims, lotSeed: seed });
      expect(new Map(shares.map(({ id, share }) => [id, share]))).toEqual(slowShares(heap, claims, seed));
    }),
    { numRuns: 500 },
  );
});

test('agrees with it where loads were collected, on shares and on what was due', () => {
  fc.assert(
    fc.property(underWay, lotSeed, ({ loads: heap, claims }, seed) => {
      const { shares } = shareOut({ loads: heap, claims, lotSeed: seed });
      expect(new Map(shares.map(({ id, share }) => [id, share]))).toEqual(slowShares(heap, claims, seed));
      const dues = slowDues(heap, claims, seed);
      for (const { id, dueMillionths } of shares) expect(Math.abs(dueMillionths - (dues.get(id) ?? 0))).toBeLessThan(1);
    }),
    { numRuns: 500 },
  );
});

test('agrees with it on a hundred claims', () => {
  const many = fc.array(fc.record({ asked: fc.nat(30), need: fc.nat(30), creditMillionths: credit }), {
    minLength: 100,
    maxLength: 100,
  });
  fc.assert(
    fc.property(many, fc.nat(2000), lotSeed, (rows, heap, seed) => {
      const claims = rows.map((row, at) => ({ ...row, id: `claim-${at}` }));
      const counts = new Map(claims.map(({ id }) => [id, 0]));
      for (const { id } of wholeQueue(claims, seed).slice(0, heap)) counts.set(id, (counts.get(id) ?? 0) + 1);
      expect(new Map([...byId(heap, claims, seed)].map(([id, { share }]) => [id, share]))).toEqual(counts);
    }),
    { numRuns: 20 },
  );
});

test('the queue as it is printed is that queue, and its first places are the shares', () => {
  fc.assert(
    fc.property(loads, booked, lotSeed, (heap, claims, seed) => {
      const printed = queueOf(claims, seed, heap);
      expect(printed.map(({ id, stage, round }) => ({ id, stage, round }))).toEqual(
        wholeQueue(claims, seed).slice(0, heap),
      );
      expect(printed.map(({ position }) => position)).toEqual(printed.map((_, at) => at + 1));
      for (const [id, { share }] of byId(heap, claims, seed))
        expect(printed.filter((place) => place.id === id)).toHaveLength(share);
    }),
  );
});

test('never more than was asked; the whole heap, or all that was asked', () => {
  fc.assert(
    fc.property(loads, booked, lotSeed, (heap, claims, seed) => {
      const shares = byId(heap, claims, seed);
      for (const { id, asked } of claims) expect(shares.get(id)?.share).toBeLessThanOrEqual(asked);
      const given = Math.min(heap, total(claims.map(({ asked }) => asked)));
      expect(total([...shares.values()].map(({ share }) => share))).toBe(given);
      expect(total([...shares.values()].map(({ dueMillionths }) => dueMillionths))).toBe(given * 1_000_000);
    }),
  );
});

test('never more than the heap, nor less than was collected, when it is run again', () => {
  fc.assert(
    fc.property(underWay, lotSeed, ({ loads: heap, claims }, seed) => {
      const shares = byId(heap, claims, seed);
      for (const { id, collected } of claims) expect(shares.get(id)?.share).toBeGreaterThanOrEqual(collected);
      const wanted = total(claims.map(({ asked, collected }) => Math.max(asked, collected)));
      expect(total([...shares.values()].map(({ share }) => share))).toBe(Math.min(heap, wanted));
    }),
  );
});

test('credits change by a sum of exactly zero', () => {
  fc.assert(
    fc.property(loads, booked, lotSeed, (heap, claims, seed) => {
      const after = total(
        [...byId(heap, claims, seed).values()].map(({ creditAfterMillionths }) => creditAfterMillionths),
      );
      expect(after - total(claims.map(({ creditMillionths }) => creditMillionths))).toBe(0);
    }),
  );
});

test('one load more costs nobody a load, and makes nobody due less', () => {
  fc.assert(
    fc.property(underWay, lotSeed, ({ loads: heap, claims }, seed) => {
      const more = byId(heap + 1, claims, seed);
      for (const [id, { share, dueMillionths }] of byId(heap, claims, seed)) {
        expect(more.get(id)?.share).toBeGreaterThanOrEqual(share);
        expect(more.get(id)?.dueMillionths).toBeGreaterThanOrEqual(dueMillionths);
      }
    }),
  );
});

test('the order in which claims arrive changes nothing', () => {
  const shuffled = underWay.chain(({ loads: heap, claims }) =>
    fc.tuple(fc.constant(heap), fc.constant(claims), fc.shuffledSubarray(claims, { minLength: claims.length })),
  );
  fc.assert(
    fc.property(shuffled, lotSeed, ([heap, claims, later], seed) => {
      expect(byId(heap, later, seed)).toEqual(byId(heap, claims, seed));
    }),
  );
});

test('equal claims differ by at most one load, whatever their credits', () => {
  const alike = fc.record({
    asked: fc.nat(9),
    need: fc.nat(9),
    credits: fc.array(credit, { minLength: 2, maxLength: 4 }),
  });
  fc.assert(
    fc.property(loads, booked, alike, lotSeed, (heap, others, { asked, need, credits }, seed) => {
      const equals = credits.map((creditMillionths, at) => ({ id: `equal-${at}`, asked, need, creditMillionths }));
      const shares = byId(heap, [...others, ...equals], seed);
      const given = equals.map(({ id }) => shares.get(id)?.share ?? Number.NaN);
      expect(Math.max(...given) - Math.min(...given)).toBeLessThanOrEqual(1);
    }),
  );
});

test('asking for more than the whole heap changes nobody’s share', () => {
  fc.assert(
    fc.property(fc.nat(9), booked, lotSeed, (heap, claims, seed) => {
      const greedy = claims.map((claim) => ({
        ...claim,
        asked: claim.asked > heap ? claim.asked * 1000 : claim.asked,
      }));
      const plain = claims.map((claim) => ({ ...claim, need: Math.min(claim.need, claim.asked) }));
      const shares = byId(heap, plain, seed);
      const after = byId(
        heap,
        greedy.map((claim, at) => ({ ...claim, need: plain[at]?.need ?? 0 })),
        seed,
      );
      for (const [id, { share }] of after) expect(share).toBe(shares.get(id)?.share);
    }),
  );
});
