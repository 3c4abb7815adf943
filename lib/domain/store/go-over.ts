import { wholeFrom } from '../quantity/checked';
import type { GoingOver, StoreLot } from './lot';

/** What was found at a lot; sound where it was counted or weighed, else null: what is not used and not bad. */
export type Found = Omit<GoingOver, 'sound'> & { readonly sound: number | null };

/** What a lot holds, and what became of the rest. Together they are what was put in. */
export type LotNow = {
  readonly sound: number;
  readonly used: number;
  readonly bad: number;
  /** What is missing on the scales: water that went into the air. Always 0 where pieces are counted. */
  readonly dried: number;
};

/**
 * A lot after one more going over.
 *
 * Method: what was sound at the last is now sound, used or bad. Pieces balance to the piece; grams may also have dried away,
 * and never come to more than there was.
 *
 * @param lot    as put in, or as last gone over
 * @param found  whole grams or pieces ≥ 0, as the lot is measured; not before the last going over
 * @returns      the lot with the record last in its goingsOver
 * @throws RangeError on a number that is not whole, on more than there was, on pieces that do not balance, on a day before the last
 * @source       common practice
 * @example      60 onions, 5 used, 2 bad → 53 sound
 */
export function goOver(lot: StoreLot, found: Found): StoreLot {
  const last = lot.goingsOver.at(-1);
  if (found.on < (last?.on ?? lot.putInOn)) throw new RangeError(`gone over before the last time: ${found.on}`);
  const there = lotNow(lot).sound;
  const left = there - wholeFrom(0, found.used) - wholeFrom(0, found.bad);
  if (left < 0) throw new RangeError(`more used and bad than the ${there} there were`);
  const sound = found.sound === null ? left : wholeFrom(0, found.sound);
  if (sound > left) throw new RangeError(`more sound than the ${left} that can be left`);
  if (lot.measure === 'pieces' && sound < left) throw new RangeError(`${left - sound} pieces are missing`);
  return { ...lot, goingsOver: [...lot.goingsOver, { ...found, sound }] };
}

/**
 * What a lot holds by its last going over, and what became of the rest.
 *
 * @returns      whole grams or pieces ≥ 0, summing to exactly what was put in
 * @throws RangeError on records that do not balance
 * @example      60 onions, twice gone over → 41 sound, 16 used, 3 bad, 0 dried
 */
export function lotNow({ putIn, goingsOver }: Pick<StoreLot, 'putIn' | 'goingsOver'>): LotNow {
  return goingsOver.reduce<LotNow>(
    (now, { sound, used, bad }) => ({
      sound: wholeFrom(0, sound),
      used: now.used + wholeFrom(0, used),
      bad: now.bad + wholeFrom(0, bad),
      dried: now.dried + wholeFrom(0, now.sound - used - bad - sound),
    }),
    { sound: wholeFrom(1, putIn), used: 0, bad: 0, dried: 0 },
  );
}
