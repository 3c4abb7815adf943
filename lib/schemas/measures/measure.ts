import { z } from 'zod';
import { form, rowId, writeId } from '../write';

const typed = z.string({ error: 'Give one value.' }).max(40, 'That is too long for a measure.').default('');

/** A bucket test as it was typed; the use-case reads it, in the member's own units. */
export const setDensityInput = form({
  writeId,
  deliveryId: rowId,
  bucket: typed,
  empty: typed,
  fill1: typed,
  fill2: typed,
  fill3: typed,
  fill4: typed,
  fill5: typed,
  fill6: typed,
  fill7: typed,
  fill8: typed,
  fill9: typed,
  fill10: typed,
});

const kept = z.string({ error: 'Give one value.' }).trim().max(40, 'That is too long for a measure.').optional();

/** What was measured of one's own barrow or jar, to be kept as a habit. */
export const keepMeasuredInput = form({ writeId, barrowLitres: kept, jarMl: kept, jarWeighedG: kept });
