import { z } from 'zod';
import { isCalendarDate } from '@/lib/domain/calendar/calendar-date';
import { day } from '../day';
import { line, optionalLine, ticked, wholeNumber } from '../text';
import { rowId, writeId } from '../write';

const amountWords = 'Give the amount as a number above 0, with at most three decimals.';
const wallTime = 'Give the day and time, such as 2026-12-03 18:00.';
const priceWords = 'Give the price in pounds, such as 180 or 180.50, or leave it empty.';

const closing = z
  .string({ error: wallTime })
  .trim()
  .transform((text) => text.replace(' ', 'T').slice(0, 16))
  .refine(
    (text) => /^\d{4}-\d\d-\d\dT([01]\d|2[0-3]):[0-5]\d$/.test(text) && isCalendarDate(text.slice(0, 10)),
    wallTime,
  );

function optionalWhole(what: string, least: number, most: number) {
  return z
    .union([z.literal('').transform(() => null), wholeNumber(what, least, most)], {
      error: `Give ${what} as a whole number, or leave it empty.`,
    })
    .default(null);
}

const facts = {
  name: line('a name for the delivery', 80),
  materialKey: line('the material', 40),
  ageMonths: optionalWhole('the age in months', 0, 240),
  supplier: optionalLine('the supplier', 80),
  amount: z
    .string({ error: amountWords })
    .trim()
    .regex(/^\d{1,6}([.,]\d{1,3})?$/, amountWords)
    .transform((text) => Math.round(Number(text.replace(',', '.')) * 1000))
    .refine((thousandths) => thousandths > 0, amountWords),
  amountUnit: z.enum(['loads', 'm3', 'tonnes'], 'Choose loads, cubic metres or tonnes.'),
  densityGPerL: wholeNumber('the density in grams a litre', 1, 3000),
  capLoads: optionalWhole('the limit for one holding', 1, 999),
  dropPoint: optionalLine('the drop point', 120),
  arrivesOn: day('the day it arrives'),
  collectByOn: day('the last day to collect'),
  closesAt: closing,
  keyHolderId: z.union([z.literal('').transform(() => null), rowId]).default(null),
  gateNote: optionalLine('the gate note', 200),
  unloadersWanted: wholeNumber('how many unloaders', 0, 50).default(0),
  price: z
    .string()
    .trim()
    .regex(/^(\d{1,6}([.,]\d{1,2})?)?$/, priceWords)
    .default('')
    .transform((text) => Math.round(Number(text.replace(',', '.') || 0) * 100)),
};

export const planDeliveryInput = z.strictObject({ writeId, ...facts });
export const changeDeliveryInput = z.strictObject({ writeId, deliveryId: rowId, ...facts });
export const deliveryInput = z.strictObject({ writeId, deliveryId: rowId });
export const callOffInput = z.strictObject({
  writeId,
  deliveryId: rowId,
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const postponeInput = z.strictObject({
  writeId,
  deliveryId: rowId,
  arrivesOn: day('the new day'),
  collectByOn: day('the last day to collect'),
  closesAt: closing,
});
export const unloadInput = z.strictObject({ writeId, deliveryId: rowId, offers: ticked() });

const loads = z
  .string({ error: 'Give whole loads, 1 to 9,999.' })
  .trim()
  .regex(/^\d{1,4}$/, 'Give whole loads, 1 to 9,999.')
  .transform(Number);

export const bookInput = z.strictObject({
  writeId,
  deliveryId: rowId,
  holdingId: rowId,
  asked: loads,
  beds: z.union([rowId.transform((id) => [id]), z.array(rowId).max(200)]).default([]),
});
export const withdrawInput = z.strictObject({ writeId, deliveryId: rowId, holdingId: rowId });
export const typeInInput = z.strictObject({
  writeId,
  deliveryId: rowId,
  rows: z.array(z.strictObject({ holdingId: rowId, asked: z.string().max(20) })).max(500),
});

export const measureInput = z.strictObject({
  writeId,
  deliveryId: rowId,
  loads: z
    .string({ error: 'Count the heap in whole loads.' })
    .trim()
    .regex(/^\d{1,5}$/, 'Count the heap in whole loads, 0 to 99,999.')
    .transform(Number),
});
export const confirmInput = z.strictObject({ writeId, deliveryId: rowId });
export const tickInput = z.strictObject({
  writeId,
  deliveryId: rowId,
  bookingId: rowId,
  loads: loads.refine((count) => count > 0, 'Give whole loads, 1 to 9,999.'),
});
export const undoTickInput = z.strictObject({ writeId, deliveryId: rowId, bookingId: rowId });
export const beyondInput = z.strictObject({
  writeId,
  deliveryId: rowId,
  bookingId: rowId,
  loads: loads.refine((count) => count > 0, 'Give whole loads, 1 to 9,999.'),
  reason: line('the reason', 200),
});
export const giveUpInput = z.strictObject({ writeId, deliveryId: rowId, bookingId: rowId });
