import { z } from 'zod';

/** The id that every write carries, made once when its form was served or on the device. */
export const writeId = z.uuid('The form has lost its number. Open the page afresh and try again.');

/** A reference to a row, from an address or a hidden field. */
export const rowId = z.uuid('Choose one from the list.');
