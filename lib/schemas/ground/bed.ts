import { z } from 'zod';
import { day, optionalDay } from '../day';
import { line, typedLength, wholeNumber } from '../text';
import { form, rowId, writeId } from '../write';

/** Beds as they are typed. The lengths are read by the use-case, in the member's own units. */
export const addBedsInput = form({
  writeId,
  plotId: rowId,
  name: line('the bed’s name', 30),
  count: wholeNumber('how many beds', 1, 40).default(1),
  width: typedLength(),
  length: typedLength(),
  x: typedLength(),
  y: typedLength(),
  gap: typedLength(),
  from: optionalDay('the day from which it is a bed'),
});

export const changeBedInput = form({
  writeId,
  bedId: rowId,
  name: line('the bed’s name', 30),
  width: typedLength(),
  length: typedLength(),
  x: typedLength(),
  y: typedLength(),
});
export const retireBedInput = form({
  writeId,
  bedId: rowId,
  from: day('the day from which it is no bed any more'),
});
export const splitBedInput = form({
  writeId,
  bedId: rowId,
  across: z.enum(['width', 'length'], 'Choose which way to cut.'),
  at: typedLength(),
  firstName: line('the first part’s name', 30),
  secondName: line('the second part’s name', 30),
  from: day('the day from which there are two'),
});
export const joinBedsInput = form({
  writeId,
  bedId: rowId,
  otherId: rowId,
  name: line('the joined bed’s name', 30),
  from: day('the day from which they are one'),
});
