import { z } from 'zod';
import { isCalendarDate } from '@/lib/domain/calendar/calendar-date';
import { isAccount } from '@/lib/domain/ledger/account';
import { entryKinds } from '@/lib/domain/ledger/entry';
import { day } from '../day';
import { line, optionalLine, optionalNote } from '../text';
import { form, optionalRowId, rowId, writeId } from '../write';
import { pounds } from './amount';

const accountWords = 'Choose an account from the list.';

/** An account as a list of choices names it. */
const account = z.string({ error: accountWords }).max(100, accountWords).refine(isAccount, accountWords);

const bankOrCash = z.enum(['bank', 'cash'], 'Choose the bank or cash.');
const on = day('the day of it');
const sure = z.literal('yes', 'Tick the box to confirm.');

export const paymentInput = form({
  writeId,
  holdingId: rowId,
  amount: pounds('what was paid'),
  on,
  into: bankOrCash,
  words: optionalLine('the words', 120),
});
export const supplierPaymentInput = form({
  writeId,
  amount: pounds('what was paid'),
  on,
  from: bankOrCash,
  deliveryId: optionalRowId,
  words: line('whom it was paid to, and what for', 120),
});
export const chargeInput = form({
  writeId,
  who: z.union([z.enum(['holdings', 'plots']), rowId], { error: 'Choose who is charged from the list.' }),
  amount: pounds('what each is charged'),
  on,
  account,
  words: line('what it is for', 120),
});
export const moveInput = form({
  writeId,
  from: account,
  to: account,
  amount: pounds('how much'),
  on,
  words: line('what it is for', 120),
});
export const openingInput = form({
  writeId,
  account,
  side: z.enum(['has', 'owes'], 'Choose one of the two.'),
  amount: pounds('what stands on it'),
  on,
});
export const reverseInput = form({ writeId, entryId: rowId, reason: line('the reason', 200), sure });
export const correctPriceInput = form({
  writeId,
  deliveryId: rowId,
  price: pounds('the right price', 0),
  reason: line('the reason', 200),
});
export const writeOffInput = form({ writeId, deliveryId: rowId, reason: line('the reason', 200) });
export const addAccountInput = form({ writeId, name: line('a name for the account', 60) });
export const accountInput = form({ writeId, accountId: rowId });
export const payNoteInput = form({ writeId, note: optionalNote('how to pay', 600) });

// Addresses bring what people leave empty, or change by hand: what cannot be read is as if it were not there.
const askedDay = z
  .string()
  .refine(isCalendarDate)
  .nullish()
  .catch(null)
  .transform((text) => text ?? null);

/** The days of a statement. */
export const days = { from: askedDay, to: askedDay };

export const ledgerAsked = z.object({
  ...days,
  account: z.string().max(100).refine(isAccount).nullish().catch(null),
  kind: z.enum(entryKinds).nullish().catch(null),
  page: z.coerce.number().int().min(0).max(100_000).catch(0),
});
export const seasonAsked = z.object({ season: z.coerce.number().int().min(1900).max(2199).nullish().catch(null) });
