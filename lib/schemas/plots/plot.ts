import { z } from 'zod';
import { day } from '../day';
import { line, typedLength } from '../text';
import { form, optionalRowId, rowId, rowIds, writeId } from '../write';

const rodsWords = 'Give the size in rods, such as 10 or 2.5, in quarters of a rod.';
const rods = z
  .string({ error: rodsWords })
  .trim()
  .regex(/^\d{1,3}([.,](0|00|25|5|50|75))?$/, rodsWords)
  .transform((text) => Math.round(Number(text.replace(',', '.')) * 4))
  .refine((quarters) => quarters > 0 && quarters <= 2560, rodsWords);

const holders = rowIds('Choose one to twenty members to hold the plot.', 20);

const bearingWords = 'Give the bearing in degrees from -360 to 360, such as 12.5.';

export const addSiteInput = form({ writeId, name: line('the site’s name', 60) });
export const addPlotInput = form({ writeId, siteId: rowId, number: line('the plot’s number', 20), rods });
export const letPlotInput = form({
  writeId,
  plotId: rowId,
  memberIds: holders,
  from: day('the day from which it is let'),
});
export const endTenancyInput = form({
  writeId,
  plotId: rowId,
  from: day('the first day on which it is no longer let'),
  sure: z.literal('yes', 'Tick the box to confirm.'),
});
export const nameBookerInput = form({
  writeId,
  holdingId: rowId,
  memberId: optionalRowId,
});
export const changeHoldersInput = form({
  writeId,
  holdingId: rowId,
  memberIds: holders,
  from: day('the day from which they hold it'),
});

/** A plot's boundary: a rectangle by size, or corners one a line; with its place on the site and its bearing. */
export const drawPlotInput = form({
  writeId,
  plotId: rowId,
  east: typedLength(),
  south: typedLength(),
  bearing: z
    .string({ error: bearingWords })
    .trim()
    .regex(/^(-?\d{1,3}([.,]\d{1,2})?)?$/, bearingWords)
    .default('0')
    .transform((text) => Math.round(Number(text.replace(',', '.')) * 100))
    .refine((centideg) => Math.abs(centideg) <= 36_000, bearingWords),
  width: typedLength(),
  length: typedLength(),
  corners: z
    .string({ error: 'Give the corners one a line.' })
    .max(4000, 'That is more corners than a plot has.')
    .default(''),
});

export const halvePlotInput = form({
  writeId,
  plotId: rowId,
  across: z.enum(['width', 'length'], 'Choose which way to cut.'),
  at: typedLength(),
  rods: z.union([z.literal('').transform(() => null), rods], { error: rodsWords }).default(null),
  firstNumber: line('the first part’s number', 20),
  secondNumber: line('the second part’s number', 20),
  from: day('the day from which there are two'),
});

export const joinPlotsInput = form({
  writeId,
  plotId: rowId,
  otherId: rowId,
  number: line('the joined plot’s number', 20),
  from: day('the day from which they are one'),
});
