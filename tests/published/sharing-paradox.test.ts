import { expect, test } from 'vitest';
import { shareOut } from '@/lib/domain/sharing/share-out';
import { census1790 } from '../fixtures/census-1790';

// After M. Balinski and H. Young: rounding by the largest remainder has the Alabama paradox, one seat more costs somebody
// a seat. The queue must not.
test('one load more never costs anybody a load: 1790, in thousands, every heap there can be', () => {
  const asked = census1790.map((people) => Math.round(people / 1000));
  const claims = asked.map((loads, at) => ({
    id: `state-${at}`,
    asked: loads,
    need: Math.floor(loads / 2),
    creditMillionths: ((at * 7) % 5) * 100_000 - 200_000,
  }));
  const all = asked.reduce((sum, loads) => sum + loads, 0);
  let before = asked.map(() => 0);
  for (let loads = 1; loads <= all; loads++) {
    const now = shareOut({ loads, claims, lotSeed: '5eed' }).shares.map(({ share }) => share);
    // Exactly one claim gains exactly one load.
    expect(now.map((share, at) => share - (before[at] ?? 0)).filter((gain) => gain !== 0)).toEqual([1]);
    before = now;
  }
  expect(before).toEqual(asked);
});
