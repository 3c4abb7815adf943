import type { CalendarDate } from '../calendar/calendar-date';
import { storeAnswers } from '../catalogue/store-model';
import { lotNow } from './go-over';
import { believedLife } from './lasts';
import { lifeDaysAt } from './life-posterior';
import { lifePrior } from './life-prior';
import type { StoreLot } from './lot';
import { lossesSeen } from './losses-seen';
import { lifeHazard, livesGathered } from './sound-share';
import { type UseBy, mustUseBy } from './must-use-by';

/** Why a lot is used before others: a code and its numbers. */
export type UseFirstReason =
  | { readonly code: 'damaged' }
  /** Kept in the light till it colours, and no keeper then. */
  | { readonly code: 'unripe-in-light' }
  | ({ readonly code: 'near-end' } & UseBy)
  /** Pieces that went bad, and that would have in a middling lot of its kind. */
  | { readonly code: 'losing-fast'; readonly badPieces: number; readonly usualPieces: number };

export type UseFirst = {
  readonly lotId: string;
  /** The most pressing first; none: it keeps. */
  readonly reasons: readonly UseFirstReason[];
  readonly useBy: UseBy;
};

const pressing: readonly UseFirstReason['code'][] = ['damaged', 'unripe-in-light', 'near-end', 'losing-fast'];

/**
 * The order in which lots are best used, with the reasons.
 *
 * Method: damaged before unripe, before what is likelier than not at its end within four weeks, before what is likelier than not to live
 * shorter than the shortest printed life of its kind; within each, whichever must be used sooner.
 *
 * @param lots   of any kinds; those of which nothing is left are passed over
 * @param today  not before their last going over
 * @returns      one for each lot that holds anything; the order does not hang on the order given
 * @throws RangeError on an unknown kind or a record after today
 * @source       the order: common practice; lives as `lifePosterior`
 * @example      split squashes, sound squashes of the same day → the split first, damaged
 */
export function firstToUse(lots: readonly StoreLot[], today: CalendarDate): UseFirst[] {
  return lots
    .filter((lot) => lotNow(lot).sound > 0)
    .map((lot): UseFirst => {
      const useBy = mustUseBy(lot, today);
      return { lotId: lot.id, reasons: reasonsFor(lot, useBy), useBy };
    })
    .sort((one, other) => rank(one) - rank(other) || sooner(one, other));
}

function reasonsFor(lot: StoreLot, useBy: UseBy): UseFirstReason[] {
  return [
    ...(lot.condition === 'damaged' ? [{ code: 'damaged' } as const] : []),
    ...(lot.condition === 'unripe' ? [{ code: 'unripe-in-light' } as const] : []),
    ...(useBy.medianDays <= storeAnswers.nearEndDays.value ? [{ code: 'near-end', ...useBy } as const] : []),
    ...losingFast(lot),
  ];
}

function losingFast(lot: StoreLot): UseFirstReason[] {
  const kind = lifePrior(lot.keepingKey, 'sound', lot.placeTenthC);
  const seen = lossesSeen(lot);
  const badPieces = seen.reduce((sum, one) => sum + one.badPieces, 0);
  if (badPieces === 0 || lifeDaysAt(believedLife(lot), 0.5) >= kind.leastDays) return [];
  const life = Math.exp(kind.logMean);
  const usualPieces = seen.reduce((sum, { fromAgeDays, toAgeDays, ...pieces }) => {
    const there = pieces.badPieces + pieces.soundPieces + pieces.usedPieces / 2;
    // By the hazard between them: of shares that are next to nothing the quotient would be no number.
    return sum + there * -Math.expm1(lifeHazard * (livesGathered(fromAgeDays, life) - livesGathered(toAgeDays, life)));
  }, 0);
  return [{ code: 'losing-fast', badPieces, usualPieces }];
}

function rank({ reasons: [first] }: UseFirst): number {
  return first ? pressing.indexOf(first.code) : pressing.length;
}

function sooner(one: UseFirst, other: UseFirst): number {
  return one.useBy.medianDays - other.useBy.medianDays || (one.lotId < other.lotId ? -1 : 1);
}
