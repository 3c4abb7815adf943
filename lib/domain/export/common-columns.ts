import { never } from './export-table';

/** Columns that many tables have, and what is said of them. */
export const id = { id: 'number of the row; other files refer to it' } as const;
export const societyId = { societyId: never('the same in every row: the society itself') } as const;
export const createdAt = { createdAt: 'when the row was written' } as const;
export const retiredAt = { retiredAt: 'when it was taken back or done with; empty while it stands' } as const;
export const holdingId = { holdingId: 'whose it is: holdings.csv; empty where the society recorded it' } as const;
export const footprint = {
  frameId: 'the axes it is measured in: frames.csv',
  xCm: 'left edge [cm]',
  yCm: 'upper edge [cm]',
  widthCm: 'width [cm]',
  lengthCm: 'length down the plot [cm]',
} as const;
export const days = {
  fromOn: 'the first day',
  untilOn: 'the first day on which it no longer holds; empty while it does',
} as const;
export const derived = 'worked out from other tables whenever it is asked for';
