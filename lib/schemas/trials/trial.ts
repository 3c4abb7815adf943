import { z } from 'zod';
import { pieces } from '@/lib/domain/trial/piece-of-bed';
import { day } from '../day';
import { line, note, optionalLine, wholeNumber } from '../text';
import { form, rowId, writeId } from '../write';

const why = line('the reason', 200);
const pick = 'Choose one from the list.';

/** A bed or half of one, as the list sends it: `bed:piece`. */
const ground = z
  .string({ error: pick })
  .max(60, pick)
  .transform((typed, context) => {
    const [bedId = '', piece, ...rest] = typed.split(':');
    const known = pieces.find((one) => one === piece);
    if (rest.length === 0 && known && rowId.safeParse(bedId).success) return { bedId, piece: known };
    context.addIssue(pick);
    return z.NEVER;
  });

export const proposeTrialInput = form({
  writeId,
  question: line('the question', 120),
  cropKey: z.string({ error: pick }).trim().min(1, pick).max(80, pick),
  season: wholeNumber('the season', 2000, 2199),
  treatmentA: note('treatment A', 500),
  treatmentB: note('treatment B', 500),
  measure: z.enum(['grams', 'pieces'], 'Say whether it is weighed or counted.'),
  joinByOn: day('the last day of joining'),
  resultsByOn: day('the last day of results'),
  leastPlots: wholeNumber('the least number of plots', 3, 100),
});

export const joinTrialInput = form({
  writeId,
  trialId: rowId,
  first: ground,
  second: ground,
  agree: z.literal('yes', 'Tick the box: without it your results could not be reported.'),
});

/** A reason is wanted once the lot is drawn. */
export const leaveTrialInput = form({ writeId, blockId: rowId, why: optionalLine('the reason', 200) });

export const callOffTrialInput = form({ writeId, trialId: rowId, why });

export const treatBlockInput = form({ writeId, blockId: rowId, treatedOn: day('the day on which both were done') });

/** What one piece of ground gave. From the harvests it carries the amount that was shown, so that nobody confirms another one. */
export const giveResultInput = form({
  writeId,
  groundId: rowId,
  source: z.enum(['harvests', 'typed'], pick),
  amount: z
    .string({ error: 'Give one amount, or 0 where it came to nothing.' })
    .trim()
    .min(1, 'Give how much it was, or 0 where it came to nothing.')
    .max(40, 'That is too long for an amount.'),
  area: z
    .string({ error: 'Give one piece of ground, such as 3.6 m².' })
    .max(40, 'That is too long for a piece of ground.')
    .default(''),
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
