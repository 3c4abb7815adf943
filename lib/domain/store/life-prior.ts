import { lifeDays, type StorageLife, storageLivesOf } from '../catalogue/storage-lives';
import { lossModel, type LotCondition, lotConditions } from '../catalogue/store-model';
import { normalQuantile } from '../statistics/normal-quantile';

/** What is held of a lot's life before anybody has gone over it: normal in the logarithm of its days. */
export type LifePrior = {
  readonly logMean: number;
  readonly logSd: number;
  /** Between these lie eight lots of ten [days]. */
  readonly leastDays: number;
  readonly mostDays: number;
  readonly life: StorageLife;
  /** What moved the printed ends. */
  readonly reasons: readonly ('one-figure' | 'no-end' | 'elsewhere' | Exclude<LotCondition, 'sound'>)[];
};

type Ends = { readonly least: number; readonly most: number; readonly reasons: LifePrior['reasons'] };

/**
 * What the published life of its kind says of a lot, before its own goings over.
 *
 * Method: eight lots of ten are held to live between the printed ends, log-normally. One figure stands for a range of half as much
 * again either way; an open end likewise. Where the place is not known to be as warm as the account wants, the lower end is
 * halved; so it is, or worse, for what was put away damaged, uncured or unripe.
 *
 * @param keepingKey   a kind with a published life
 * @param condition    in which it was put away
 * @param placeTenthC  how warm it stands [tenths of °C]; null where nobody knows
 * @returns            0 < leastDays < mostDays, and the normal distribution that has a tenth below and a tenth above them
 * @throws RangeError  on a kind without a life
 * @source             the account that the catalogue sets out from
 * @example            butternuts, sound, at 11 °C → 61 to 91 days
 */
export function lifePrior(keepingKey: string, condition: LotCondition, placeTenthC: number | null): LifePrior {
  const [life] = storageLivesOf(keepingKey);
  if (!life?.starts || life.least === null) throw new RangeError(`no published life of ${keepingKey}`);
  const ends = putAway(keptElsewhere(printedEnds(life, life.least), life, placeTenthC), condition);
  const [low, high] = [Math.log(ends.least), Math.log(ends.most)];
  const width = 2 * normalQuantile(0.5 + lossModel.lifeRangePercent.value / 200);
  return {
    logMean: (low + high) / 2,
    logSd: (high - low) / width,
    leastDays: ends.least,
    mostDays: ends.most,
    life,
    reasons: ends.reasons,
  };
}

function printedEnds({ most, printedIn }: StorageLife, printedLeast: number): Ends {
  const least = lifeDays(printedLeast, printedIn);
  const factor = lossModel.oneFigureFactor.value;
  if (most === null) return { least, most: least * factor, reasons: ['no-end'] };
  if (most === printedLeast) return { least: least / factor, most: least * factor, reasons: ['one-figure'] };
  return { least, most: lifeDays(most, printedIn), reasons: [] };
}

// An account that names no warmth is of a common store, and holds anywhere.
function keptElsewhere(ends: Ends, { fromTenthC, toTenthC }: StorageLife, placeTenthC: number | null): Ends {
  const [from, to] = [fromTenthC ?? -Infinity, toTenthC ?? Infinity];
  if (fromTenthC === null && toTenthC === null) return ends;
  if (placeTenthC !== null && placeTenthC >= from && placeTenthC <= to) return ends;
  const { value } = lossModel.elsewhereLeastDividedBy;
  return { ...ends, least: ends.least / value, reasons: [...ends.reasons, 'elsewhere'] };
}

function putAway(ends: Ends, condition: LotCondition): Ends {
  if (condition === 'sound') return ends;
  const { leastDividedBy, mostDividedBy } = lotConditions[condition];
  return {
    least: ends.least / leastDividedBy,
    most: ends.most / mostDividedBy,
    reasons: [...ends.reasons, condition],
  };
}
