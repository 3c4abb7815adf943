import { shareOut } from '@/lib/domain/sharing/share-out';
import { growing, type Measured, sideBySide } from './side-by-side';

/** Sharing a heap out among ever more claims, beside a plain sort. */
export function measureShareOut() {
  const rows = [100, 1000, 10_000, 100_000].map(shareOutAmong);
  return growing('Share-out', 'a plain sort of as many numbers', 'claims', rows);
}

function shareOutAmong(count: number): Measured {
  const claims = Array.from({ length: count }, (_, at) => ({
    id: `claim-${at}`,
    asked: (at * 7) % 13,
    need: (at * 5) % 9,
    creditMillionths: ((at * 37) % 101) * 1000,
  }));
  const numbers = claims.map(({ creditMillionths }, at) => (creditMillionths * 7919 + at * 104_729) % 1_000_003);
  const loads = count * 3;
  return sideBySide(
    count,
    () => shareOut({ loads, claims, lotSeed: 'ab'.repeat(32) }),
    () => numbers.toSorted((a, b) => a - b),
  );
}
