import { daysBetween } from '../calendar/calendar-date';
import { keepingOf } from '../catalogue/keepings';
import { positive } from '../quantity/checked';
import type { StoreLot } from './lot';

/** What one going over tells of losses: pieces that went bad, were used or stayed sound, between two ages of the lot. */
export type LossSeen = {
  readonly fromAgeDays: number;
  readonly toAgeDays: number;
  readonly badPieces: number;
  readonly usedPieces: number;
  readonly soundPieces: number;
};

// Two goings over on one day are half a day apart.
const leastApartDays = 0.5;

/** Grams or pieces of a lot that make one piece; what is weighed goes bad by the piece too. */
export function amountPerPiece({ keepingKey, measure, pieceG }: Pick<StoreLot, 'keepingKey' | 'measure' | 'pieceG'>) {
  const keeping = keepingOf(keepingKey);
  if (!keeping) throw new RangeError(`no kind of keeping: ${keepingKey}`);
  return measure === 'pieces' ? 1 : positive(pieceG ?? keeping.pieceG, 'the weight of a piece');
}

/**
 * A lot's goings over as what they tell of its losses.
 *
 * Method: each covers the time since the one before, or since the lot was put in. Grams become pieces, not whole ones, by the
 * weight of one. What dried away tells nothing of rot.
 *
 * @param lot  its goings over in order of their days
 * @returns    one for each, ages in days since it was put in, from before to
 * @throws RangeError on an unknown kind, or a weight of a piece that is none
 * @example    12 kg of potatoes, after 30 days 240 g bad, pieces of 120 g → 2 bad of 100
 */
export function lossesSeen(lot: StoreLot): LossSeen[] {
  const perPiece = amountPerPiece(lot);
  let before = 0;
  return lot.goingsOver.map(({ on, used, bad, sound }) => {
    const fromAgeDays = before;
    const toAgeDays = Math.max(daysBetween(lot.putInOn, on), fromAgeDays + leastApartDays);
    before = toAgeDays;
    return {
      fromAgeDays,
      toAgeDays,
      badPieces: bad / perPiece,
      usedPieces: used / perPiece,
      soundPieces: sound / perPiece,
    };
  });
}
