import { z } from 'zod';
import { isTwoWays } from '@/lib/domain/quantity/two-ways';
import { bales } from '@/lib/domain/catalogue/bales';
import { day } from '../day';
import { line, optionalLine, optionalWhole, ticked, wholeNumber } from '../text';
import { wallTime } from '../wall-time';
import { form, optionalRowId, rowId, rowIds, writeId } from '../write';

const amountWords = 'Give the amount as a number above 0, with at most three decimals.';
const priceWords = 'Give the price in pounds, such as 180 or 180.50, or leave it empty.';

const facts = {
  name: line('a name for the delivery', 80),
  materialKey: line('the material', 40),
  ageMonths: optionalWhole('the age in months', 0, 240),
  supplier: optionalLine('the supplier', 80),
  supplierId: optionalRowId,
  amount: z
    .string({ error: amountWords })
    .trim()
    .regex(/^\d{1,6}([.,]\d{1,3})?$/, amountWords)
    .refine((text) => !isTwoWays(text), amountWords)
    .transform((text) => Math.round(Number(text.replace(',', '.')) * 1000))
    .refine((thousandths) => thousandths > 0, amountWords),
  amountUnit: z.enum(['loads', 'm3', 'tonnes', 'bales'], 'Choose loads, cubic metres, tonnes or bales.'),
  densityGPerL: wholeNumber('the density in grams a litre', 1, 3000),
  bale: z
    .enum(['', ...bales.map(({ key }) => key)], 'Choose a kind of bale from the list, or none of these.')
    .default('')
    .transform((key) => key || null),
  baleKg: optionalWhole('what a bale weighs in kilograms', 1, 900),
  capLoads: optionalWhole('the limit for one holding', 1, 999),
  dropPoint: optionalLine('the drop point', 120),
  dropPointId: optionalRowId,
  arrivesOn: day('the day it arrives'),
  collectByOn: day('the last day to collect'),
  closesAt: wallTime,
  keyHolderId: optionalRowId,
  gateNote: optionalLine('the gate note', 200),
  unloadersWanted: wholeNumber('how many unloaders', 0, 50).default(0),
  thanks: optionalLine('what is given beside money', 120),
  price: z
    .string({ error: priceWords })
    .trim()
    .regex(/^(\d{1,6}([.,]\d{1,2})?)?$/, priceWords)
    .default('')
    .transform((text) => Math.round(Number(text.replace(',', '.') || 0) * 100)),
};

export const planDeliveryInput = form({ writeId, withId: optionalRowId, ...facts });
export const changeDeliveryInput = form({ writeId, deliveryId: rowId, ...facts });
export const deliveryInput = form({ writeId, deliveryId: rowId });
export const callOffInput = form({
  writeId,
  deliveryId: rowId,
  together: ticked(),
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const tipAtInput = form({ writeId, deliveryId: rowId, dropPointId: rowId });
export const postponeInput = form({
  writeId,
  deliveryId: rowId,
  arrivesOn: day('the new day'),
  collectByOn: day('the last day to collect'),
  closesAt: wallTime,
});
export const unloadInput = form({ writeId, deliveryId: rowId, offers: ticked() });

const loads = z
  .string({ error: 'Give whole loads, 1 to 9,999.' })
  .trim()
  .regex(/^\d{1,4}$/, 'Give whole loads, 1 to 9,999.')
  .transform(Number);

export const bookInput = form({
  writeId,
  deliveryId: rowId,
  holdingId: rowId,
  asked: loads,
  beds: rowIds('Choose beds from the list.', 200).default([]),
});
export const withdrawInput = form({ writeId, deliveryId: rowId, holdingId: rowId });
const sheetWords = 'Give whole loads beside each holding, 1 to 9,999, or leave it empty.';

export const typeInInput = form({
  writeId,
  deliveryId: rowId,
  rows: z
    .array(form({ holdingId: rowId, asked: z.string({ error: sheetWords }) }), { error: sheetWords })
    .max(500, 'That is more than one sheet holds. Send it in parts.'),
});

export const measureInput = form({
  writeId,
  deliveryId: rowId,
  loads: z
    .string({ error: 'Count the heap in whole loads.' })
    .trim()
    .regex(/^\d{1,5}$/, 'Count the heap in whole loads, 0 to 99,999.')
    .transform(Number),
});
export const confirmInput = form({ writeId, deliveryId: rowId });
export const tickInput = form({
  writeId,
  deliveryId: rowId,
  bookingId: rowId,
  loads: loads.refine((count) => count > 0, 'Give whole loads, 1 to 9,999.'),
});
export const undoTickInput = form({ writeId, deliveryId: rowId, bookingId: rowId });
export const beyondInput = form({
  writeId,
  deliveryId: rowId,
  bookingId: rowId,
  loads: loads.refine((count) => count > 0, 'Give whole loads, 1 to 9,999.'),
  reason: line('the reason', 200),
});
export const holdInput = form({ writeId, deliveryId: rowId, reason: line('the reason', 200) });
export const giveUpInput = form({ writeId, deliveryId: rowId, bookingId: rowId });
