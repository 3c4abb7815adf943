import { z } from 'zod';
import { supplierUnits } from '@/lib/domain/delivery/supplier-unit';
import { line, optionalLine, optionalNote, optionalWhole } from '../text';
import { form, rowId, writeId } from '../write';

const baleWords = 'Give the weight of a bale in kilograms, from 1 to 1,000, or leave it empty.';
const priceWords = 'Give the price of one in pounds, such as 60 or 60.50, or leave it empty.';

const sure = z.literal('yes', 'Tick the box to confirm.');

const supplier = {
  name: line('the supplier’s name', 80),
  reach: optionalLine('how to reach them', 200),
  notes: optionalNote('the notes'),
};

const load = {
  materialKey: line('the material', 40),
  unit: z.enum(supplierUnits, 'Choose trailer loads, cubic metres, tonnes or bales.'),
  trailerLitres: optionalWhole('what a trailer holds in litres', 100, 60_000),
  baleKg: z
    .string({ error: baleWords })
    .trim()
    .regex(/^(\d{1,4}([.,]\d)?)?$/, baleWords)
    .default('')
    .transform((text) => (text === '' ? null : Math.round(Number(text.replace(',', '.')) * 1000)))
    .refine((massG) => massG === null || (massG >= 1000 && massG <= 1_000_000), baleWords),
  densityGPerL: optionalWhole('the density in grams a litre', 1, 3000),
  price: z
    .string({ error: priceWords })
    .trim()
    .regex(/^(\d{1,5}([.,]\d{1,2})?)?$/, priceWords)
    .default('')
    .transform((text) => (text === '' ? null : Math.round(Number(text.replace(',', '.')) * 100))),
  thanks: optionalLine('what is given in thanks', 90),
};

export const addSupplierInput = form({ writeId, ...supplier });
export const changeSupplierInput = form({ writeId, supplierId: rowId, ...supplier });
export const retireSupplierInput = form({ writeId, supplierId: rowId, sure });
export const addSupplierLoadInput = form({ writeId, supplierId: rowId, ...load });
export const changeSupplierLoadInput = form({ writeId, supplierLoadId: rowId, ...load });
export const retireSupplierLoadInput = form({ writeId, supplierLoadId: rowId, sure });
