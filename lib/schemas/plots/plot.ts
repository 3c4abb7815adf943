import { z } from 'zod';
import { day } from '../day';
import { line } from '../text';
import { rowId, writeId } from '../write';

const rodsWords = 'Give the size in rods, such as 10 or 2.5, in quarters of a rod.';
const rods = z
  .string({ error: rodsWords })
  .trim()
  .regex(/^\d{1,3}([.,](0|00|25|5|50|75))?$/, rodsWords)
  .transform((text) => Math.round(Number(text.replace(',', '.')) * 4))
  .refine((quarters) => quarters > 0 && quarters <= 2560, rodsWords);

const typed = z.string().max(40, 'That is too long for a length.').default('');
const many = (words: string) => z.union([rowId.transform((id) => [id]), z.array(rowId).max(20)], { error: words });

export const addSiteInput = z.strictObject({ writeId, name: line('the site’s name', 60) });
export const addPlotInput = z.strictObject({ writeId, siteId: rowId, number: line('the plot’s number', 20), rods });
export const letPlotInput = z.strictObject({
  writeId,
  plotId: rowId,
  memberIds: many('Choose at least one member to hold the plot.'),
  from: day('the day from which it is let'),
});
export const endTenancyInput = z.strictObject({
  writeId,
  plotId: rowId,
  from: day('the first day on which it is no longer let'),
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const nameBookerInput = z.strictObject({
  writeId,
  holdingId: rowId,
  memberId: z.union([z.literal('').transform(() => null), rowId]).default(null),
});
export const changeHoldersInput = z.strictObject({
  writeId,
  holdingId: rowId,
  memberIds: many('Choose at least one member to hold the plot.'),
  from: day('the day from which they hold it'),
});

/** A plot's boundary: a rectangle by size, or corners one a line; with its place on the site and its bearing. */
export const drawPlotInput = z.strictObject({
  writeId,
  plotId: rowId,
  east: typed,
  south: typed,
  bearing: z
    .string()
    .trim()
    .regex(/^-?\d{0,3}([.,]\d{1,2})?$/, 'Give the bearing in degrees, such as 12.5.')
    .default('0')
    .transform((text) => Math.round(Number(text.replace(',', '.') || 0) * 100)),
  width: typed,
  length: typed,
  corners: z.string().max(4000, 'That is more corners than a plot has.').default(''),
});

export const halvePlotInput = z.strictObject({
  writeId,
  plotId: rowId,
  across: z.enum(['width', 'length'], 'Choose which way to cut.'),
  at: typed,
  rods: z.union([z.literal('').transform(() => null), rods]).default(null),
  firstNumber: line('the first part’s number', 20),
  secondNumber: line('the second part’s number', 20),
  from: day('the day from which there are two'),
});

export const joinPlotsInput = z.strictObject({
  writeId,
  plotId: rowId,
  otherId: rowId,
  number: line('the joined plot’s number', 20),
  from: day('the day from which they are one'),
});
