import { z } from 'zod';
import { day } from '../day';
import { optionalNote, typedLength } from '../text';
import { form, rowId, writeId } from '../write';

export const recordTroubleInput = form({
  writeId,
  bedId: rowId,
  troubleKey: z
    .string({ error: 'Choose what was found.' })
    .min(1, 'Choose what was found.')
    .max(60, 'Choose what was found.'),
  certainty: z.enum(['suspected', 'likely', 'sure'], 'Say how sure you are.'),
  foundOn: day('the day it was found'),
  partFrom: typedLength(),
  partLength: typedLength(),
  notes: optionalNote('the notes'),
});

export const retireTroubleInput = form({
  writeId,
  troubleId: rowId,
  sure: z.literal('yes', 'Tick the box to confirm that it was a mistake.'),
});
