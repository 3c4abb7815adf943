import { z } from 'zod';
import { badWhys } from '@/lib/domain/store/lot';
import { optionalDay } from '../day';
import { optionalWhole, ticked } from '../text';
import { form, rowId, writeId } from '../write';

const whyWords = 'Choose from the list why it was taken out.';
const badWhy = z
  .union([z.literal('').transform(() => null), z.enum(badWhys, whyWords)], { error: whyWords })
  .default(null);

/** An amount as it is typed; the use-case reads it as the lot is measured. Empty is none. */
function amount(words: string) {
  return z.string({ error: words }).trim().max(40, 'That is too long for an amount.').default('');
}

export const goOverInput = form({
  writeId,
  lotId: rowId,
  on: optionalDay('the day'),
  used: amount('Say how much was used.'),
  bad: amount('Say how much was taken out bad.'),
  badWhy,
  /** What is sound by the scales; empty: what is neither used nor bad. */
  sound: amount('Say how much is sound.'),
  /** What the page said was there: somebody else may have gone over it since. */
  there: optionalWhole('what was there', 0, 10_000_000),
});
export const finishLotInput = form({
  writeId,
  lotId: rowId,
  how: z.enum(['used', 'bad'], 'Say whether the rest was used, or went bad.'),
  badWhy,
});
export const undoGoingOverInput = form({
  writeId,
  goingOverId: rowId,
  /** With those after it. */
  withAfter: ticked(),
});
