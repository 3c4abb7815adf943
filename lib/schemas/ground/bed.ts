import { z } from 'zod';
import { day, optionalDay } from '../day';
import { line, wholeNumber } from '../text';
import { rowId, writeId } from '../write';

const typed = z.string().max(40, 'That is too long for a length.').default('');

/** Beds as they are typed. The lengths are read by the use-case, in the member's own units. */
export const addBedsInput = z.strictObject({
  writeId,
  plotId: rowId,
  name: line('the bed’s name', 30),
  count: wholeNumber('how many beds', 1, 40).default(1),
  width: typed,
  length: typed,
  x: typed,
  y: typed,
  gap: typed,
  from: optionalDay('the day from which it is a bed'),
});

export const changeBedInput = z.strictObject({
  writeId,
  bedId: rowId,
  name: line('the bed’s name', 30),
  width: typed,
  length: typed,
  x: typed,
  y: typed,
});
export const retireBedInput = z.strictObject({
  writeId,
  bedId: rowId,
  from: day('the day from which it is no bed any more'),
});
export const splitBedInput = z.strictObject({
  writeId,
  bedId: rowId,
  across: z.enum(['width', 'length'], 'Choose which way to cut.'),
  at: typed,
  firstName: line('the first part’s name', 30),
  secondName: line('the second part’s name', 30),
  from: day('the day from which there are two'),
});
export const joinBedsInput = z.strictObject({
  writeId,
  bedId: rowId,
  otherId: rowId,
  name: line('the joined bed’s name', 30),
  from: day('the day from which they are one'),
});
