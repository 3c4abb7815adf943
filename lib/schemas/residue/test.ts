import { z } from 'zod';
import { bioassayRules } from '@/lib/domain/catalogue/bioassay-protocols';
import { day, optionalDay } from '../day';
import { line, wholeNumber } from '../text';
import { form, optionalRowId, rowId, writeId } from '../write';

const { leastTestPots, leastControlPots, leastSeedsAPot } = bioassayRules;
const mostPots = 12;

export const startTestInput = form({
  writeId,
  deliveryId: optionalRowId,
  name: line('a name for the test', 80),
  manureParts: wholeNumber('the parts of manure', 1, 9),
  mixParts: wholeNumber('the parts of potting mix', 1, 9),
  testPots: wholeNumber('the pots with manure', leastTestPots, mostPots),
  controlPots: wholeNumber('the pots without manure', leastControlPots, mostPots),
  seedsAPot: wholeNumber('the seeds in each pot', leastSeedsAPot, 20),
  sownOn: optionalDay('the day of sowing'),
});

const testId = rowId;

export const sowTestInput = form({ writeId, testId, sownOn: day('the day of sowing') });

const countWords = 'Give whole numbers for each pot that was read.';
const count = z.string({ error: countWords }).max(20, countWords).default('');
const potsWords = 'Give a line for each pot of the test.';

export const recordReadingInput = form({
  writeId,
  testId,
  on: day('the day of the reading'),
  /** The day of the reading that this one corrects. */
  replaces: optionalDay('the day of the reading that it corrects'),
  pots: z
    .array(form({ potId: line('the pot', 20), up: count, distorted: count, trueLeaves: count }), { error: potsWords })
    .max(2 * mostPots, potsWords),
});

export const endTestInput = form({ writeId, testId });
export const takeBackTestInput = form({
  writeId,
  testId,
  sure: z.literal('yes', 'Tick the box to confirm that it was a mistake.'),
});
