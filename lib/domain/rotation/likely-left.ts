import { type Persistence, persistenceOf } from '../catalogue/persistence';
import type { SourceKey } from '../catalogue/sources';

/** What is likely left of a trouble, as a range; never an all-clear. */
export type LikelyLeft = {
  /** Of what was there when it was last fed, in thousandths; null where no source gives a rate. */
  readonly range: { readonly leastPermille: number; readonly mostPermille: number } | null;
  /** It was found alive after so many years; null where no source says. */
  readonly livesYears: number | null;
  readonly sources: readonly SourceKey[];
};

/**
 * What is likely left of a trouble after years without a host, as published accounts give it.
 *
 * Method: a half-life halves, a yearly loss compounds; the range runs from the smallest of all accounts to the largest,
 * since sources disagree by much. It is of what was there, not of what is needed to spoil a crop.
 *
 * @param trouble    a key of the catalogue
 * @param hostFree   whole years without a host, ≥ 0
 * @returns          thousandths, 0 ≤ least ≤ most ≤ 1000; most is at least 1 while anything may live
 * @throws RangeError on a negative or fractional number of years
 * @source           each account's own; see the catalogue
 * @example          likelyLeft('clubroot', 7) → most 260, by a half-life of 3.6 years
 */
export function likelyLeft(trouble: string, hostFree: number): LikelyLeft {
  if (!Number.isSafeInteger(hostFree) || hostFree < 0) throw new RangeError(`whole years from 0: ${hostFree}`);
  const accounts = persistenceOf(trouble);
  const shares = accounts.flatMap((account) => sharesLeft(account, hostFree));
  const lives = accounts.flatMap((account) => (account.kind === 'lives' ? [account.years] : []));
  return {
    range: shares.length
      ? {
          leastPermille: Math.floor(Math.min(...shares) * 1000 + 1e-9),
          mostPermille: Math.max(1, Math.ceil(Math.max(...shares) * 1000 - 0.5)),
        }
      : null,
    livesYears: lives.length ? Math.max(...lives) : null,
    sources: [...new Set(accounts.map(({ source }) => source))],
  };
}

function sharesLeft(account: Persistence, years: number): number[] {
  if (account.kind === 'half-life') return [0.5 ** (years / account.years)];
  if (account.kind === 'yearly-loss')
    return [(1 - account.mostPercent / 100) ** years, (1 - account.leastPercent / 100) ** years];
  return [];
}
