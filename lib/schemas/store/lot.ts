import { z } from 'zod';
import { type LotCondition, lotConditions } from '@/lib/domain/catalogue/store-model';
import { day, optionalDay } from '../day';
import { optionalLine, optionalNote, optionalWhole } from '../text';
import { form, optionalRowId, rowId, writeId } from '../write';

const kindWords = 'Choose what it is from the list.';
const conditions = Object.keys(lotConditions) as LotCondition[];

/** A kind of keeping by its key; the use-case knows which there are. */
export const keepingKey = z.string({ error: kindWords }).min(1, kindWords).max(60, kindWords);

const facts = {
  keepingKey,
  variety: optionalLine('the variety', 80),
  measure: z.enum(['pieces', 'grams'], 'Say whether it is counted or weighed.'),
  amount: z
    .string({ error: 'Say how much it is.' })
    .trim()
    .min(1, 'Say how much it is.')
    .max(40, 'That is too long for an amount.'),
  pieceWeight: z
    .string({ error: 'Give one weight, such as 120 g.' })
    .trim()
    .max(40, 'That is too long for a weight.')
    .default(''),
  putInOn: day('the day it was put in'),
  condition: z.enum(conditions, 'Say in what state it was put in.'),
  goingOverDays: optionalWhole('how often it is gone over, in days,', 1, 366),
  curingFrom: optionalDay('the day it was laid out to cure'),
  source: optionalLine('where it came from', 120),
  notes: optionalNote('the notes'),
};

export const putInInput = form({ writeId, placeId: rowId, harvestId: optionalRowId, ...facts });
export const correctLotInput = form({ writeId, lotId: rowId, ...facts });
export const moveLotInput = form({ writeId, lotId: rowId, placeId: rowId });
export const cureLotInput = form({ writeId, lotId: rowId, curedOn: day('the day its curing was done') });
export const takeBackLotInput = form({
  writeId,
  lotId: rowId,
  sure: z.literal('yes', 'Tick the box to confirm that it was a mistake.'),
});
