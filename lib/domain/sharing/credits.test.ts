import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { shareOut } from './share-out';

/** One delivery among some holdings, each asking for as much as it may hold; what it leaves them as credit. */
function deliver(credits: ReadonlyMap<string, number>, contenders: readonly string[], loads: number, lotSeed: string) {
  const claims = contenders.map((id) => ({ id, asked: 99, need: 99, creditMillionths: credits.get(id) ?? 0 }));
  const { shares } = shareOut({ loads, claims, lotSeed });
  return new Map([
    ...credits,
    ...shares.map(({ id, creditAfterMillionths }): [string, number] => [id, creditAfterMillionths]),
  ]);
}

const largest = (credits: ReadonlyMap<string, number>) => Math.max(0, ...[...credits.values()].map(Math.abs));
const holdings = (count: number) => Array.from({ length: count }, (_, at) => `holding-${at}`);

describe('the same holdings contend', () => {
  test.each([2, 3, 7, 12])('%s of them: credits stay under one load over 1,000 deliveries', (count) => {
    const ids = holdings(count);
    let credits: ReadonlyMap<string, number> = new Map();
    let worst = 0;
    for (let delivery = 0; delivery < 1000; delivery++) {
      // Triangular numbers: odd loads come round at no fixed step.
      credits = deliver(credits, ids, ((delivery * (delivery + 1)) / 2) % (3 * count), `seed-${delivery}`);
      worst = Math.max(worst, largest(credits));
      expect([...credits.values()].reduce((sum, credit) => sum + credit, 0)).toBe(0);
    }
    expect(worst).toBeGreaterThan(0);
    expect(worst).toBeLessThan(1_000_000);
  });
});

describe('changing holdings contend', () => {
  // Two pairs, then their losers, and so on: who goes without in each pair meets another who did.
  test.each([1, 2, 3, 4, 5, 6])('the pairing tree of 2^%s holdings reaches exactly half as many loads', (rounds) => {
    let credits: ReadonlyMap<string, number> = new Map();
    let losers = holdings(2 ** rounds);
    for (let round = 1; round <= rounds; round++) {
      const next: string[] = [];
      for (let at = 0; at < losers.length; at += 2) {
        const pair = losers.slice(at, at + 2);
        credits = deliver(credits, pair, 1, `seed-${round}-${at}`);
        next.push(...pair.filter((id) => credits.get(id) === round * 500_000));
      }
      expect(next).toHaveLength(losers.length / 2);
      losers = next;
    }
    expect(largest(credits)).toBe(rounds * 500_000);
  });

  test('no credit is ever beyond (n − 1)/2 loads, whoever contends', () => {
    const run = fc
      .integer({ min: 2, max: 8 })
      .chain((count) =>
        fc.tuple(
          fc.constant(count),
          fc.array(fc.tuple(fc.subarray(holdings(count), { minLength: 1 }), fc.nat(7)), { maxLength: 60 }),
        ),
      );
    fc.assert(
      fc.property(run, ([count, deliveries]) => {
        let credits: ReadonlyMap<string, number> = new Map();
        for (const [at, [contenders, loads]] of deliveries.entries()) {
          credits = deliver(credits, contenders, loads, `seed-${at}`);
          // A leftover millionth may fall the same way each time; the bound is of loads that divide without one.
          expect(largest(credits)).toBeLessThanOrEqual(((count - 1) / 2) * 1_000_000 + at + 1);
        }
      }),
    );
  });
});
