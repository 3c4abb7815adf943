import { z } from 'zod';
import { diggingMethods } from '@/lib/domain/catalogue/digging-methods';
import { workKinds } from '@/lib/domain/ground/work-kinds';
import { optionalDay } from '../day';
import { optionalLine, optionalWhole, typedLength } from '../text';
import { form, rowId, writeId } from '../write';
import { season } from './planting';

const opening = diggingMethods.filter(({ loosenedSpits }) => loosenedSpits > 0).map(({ key }) => key);
const methodWords = 'Choose how it was dug from the list.';
const byWords = 'Say whether that is barrow-loads, a weight or a rate.';

/** Work that was done, as it is typed. Amounts and lengths are read by the use-case, in the member's own units. */
export const logWorkInput = form({
  writeId,
  bedId: rowId,
  kind: z.enum(workKinds, 'Say what was done.').default('manured'),
  season,
  doneOn: optionalDay('the day'),
  materialKey: optionalLine('the material', 40),
  amount: z.string({ error: 'Give one amount.' }).trim().max(40, 'That is too long for an amount.').default(''),
  amountBy: z.enum(['loads', 'weight', 'rate'], byWords).default('loads'),
  ageMonths: optionalWhole('the age in months', 0, 240),
  placed: z.enum(['dug-in', 'on-top'], 'Say whether it was dug in or left on top.').default('dug-in'),
  method: z
    .union([z.literal('').transform(() => null), z.enum(opening, methodWords)], { error: methodWords })
    .default(null),
  depth: typedLength(),
  partFrom: typedLength(),
  partLength: typedLength(),
});

export const retireWorkInput = form({ writeId, bedId: rowId, workId: rowId });
