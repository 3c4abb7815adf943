import { z } from 'zod';
import { form, rowId, writeId } from '../write';
import { keepingKey } from './lot';

/** What a household says of one kind; what is left empty is not said any more. */
export const sayUseInput = form({
  writeId,
  holdingId: rowId,
  keepingKey,
  perWeek: z
    .string({ error: 'Say how many you use a week, such as 5.' })
    .trim()
    .max(40, 'That is too long for an amount.')
    .default(''),
  newCropFrom: z
    .string({ error: 'Give a day of the year, such as 20 July.' })
    .trim()
    .max(20, 'That is too long for a day of the year.')
    .default(''),
});
