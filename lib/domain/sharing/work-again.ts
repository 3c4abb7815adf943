import type { Claim } from './claim';
import { commitmentOf, type LotBooking, lotSeed } from './lot';
import { type ShareOut, shareOut } from './share-out';

/** Everything that a share-out rests on, as every member may have it. Plain data: it may be kept and sent. */
export type ShareOutInputs = {
  readonly deliveryId: string;
  /** Published when booking opened. */
  readonly commitment: string;
  readonly bytesHex: string;
  /** In the heap [barrow-loads]. */
  readonly loads: number;
  /** The bookings as closing froze them. */
  readonly frozen: readonly LotBooking[];
  /** The claims as they stand: with what was collected, lowered where shares were given up, and those who came late. */
  readonly claims: readonly Claim[];
};

/** What a page shows of one claim. */
export type ShownShare = {
  readonly id: string;
  readonly share: number;
  readonly dueMillionths: number;
  readonly creditAfterMillionths: number;
};

export type Difference =
  /** The bytes are not those whose hash was published. */
  | { readonly code: 'hash'; readonly published: string; readonly found: string }
  /** A claim is not what was frozen, or was never booked in time. */
  | { readonly code: 'claim-changed' | 'claim-missing'; readonly id: string }
  /** Shown, and not among the claims; or the other way. */
  | { readonly code: 'not-claimed' | 'not-shown'; readonly id: string }
  | {
      readonly code: 'share' | 'due' | 'credit';
      readonly id: string;
      readonly shown: number;
      readonly found: number;
    };

export type WorkedAgain = {
  readonly seed: string;
  readonly result: ShareOut;
  readonly differences: readonly Difference[];
};

/**
 * Work a share-out out again from what it rests on, and compare it with what is shown. The server and the reader's own browser
 * run this same function.
 *
 * Method: the hash of the bytes is compared with the one that was published; the seed is made anew from bytes and frozen
 * bookings; the claims are held against the frozen bookings (a share given up may have lowered what was asked, nothing else
 * may differ); the queue is run; and every figure is compared.
 *
 * @param inputs  as frozen and as they stand
 * @param shown   one line for each claim; whole loads, and whole millionths of one
 * @returns       no difference where all agrees
 * @throws RangeError as `shareOut` and `lotSeed`
 * @source        the rule of the queue; FIPS 180-4 for the hashes
 * @example       inputs of a confirmed share-out and the shares it wrote → no differences
 */
export function workAgain(inputs: ShareOutInputs, shown: readonly ShownShare[]): WorkedAgain {
  const { deliveryId, commitment, bytesHex, loads, frozen, claims } = inputs;
  const found = commitmentOf(bytesHex);
  const seed = lotSeed({ bytesHex, deliveryId, bookings: frozen });
  const result = shareOut({ loads, claims, lotSeed: seed });
  const hash = found === commitment ? [] : [{ code: 'hash' as const, published: commitment, found }];
  return { seed, result, differences: [...hash, ...againstFrozen(frozen, claims), ...againstShown(result, shown)] };
}

function againstFrozen(frozen: readonly LotBooking[], claims: readonly Claim[]): Difference[] {
  const bookings = new Map(frozen.map((booking) => [booking.id, booking]));
  const inTime = claims.filter(({ late }) => late === undefined);
  const present = new Set(inTime.map(({ id }) => id));
  const changed = inTime.filter(({ id, asked, need, creditMillionths }) => {
    const booking = bookings.get(id);
    return !booking || asked > booking.asked || need !== booking.need || creditMillionths !== booking.creditMillionths;
  });
  return [
    ...changed.map(({ id }) => ({ code: 'claim-changed' as const, id })),
    ...frozen.filter(({ id }) => !present.has(id)).map(({ id }) => ({ code: 'claim-missing' as const, id })),
  ];
}

function againstShown({ shares }: ShareOut, shown: readonly ShownShare[]): Difference[] {
  const lines = new Map(shown.map((line) => [line.id, line]));
  const claimed = new Set(shares.map(({ id }) => id));
  const compared = shares.flatMap(({ id, share, dueMillionths, creditAfterMillionths }): Difference[] => {
    const line = lines.get(id);
    if (!line) return [{ code: 'not-shown', id }];
    const pairs = [
      ['share', line.share, share],
      ['due', line.dueMillionths, dueMillionths],
      ['credit', line.creditAfterMillionths, creditAfterMillionths],
    ] as const;
    return pairs.flatMap(([code, is, found]) => (is === found ? [] : [{ code, id, shown: is, found }]));
  });
  const strangers = shown.filter(({ id }) => !claimed.has(id)).map(({ id }) => ({ code: 'not-claimed' as const, id }));
  return [...compared, ...strangers];
}
