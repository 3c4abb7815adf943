import { z } from 'zod';
import { day } from '../day';
import { rowId, writeId } from '../write';

/** A pasted or uploaded list of plots and holders. The table itself is read by `readPlotsCsv`. */
export const importPlotsInput = z.strictObject({
  writeId,
  siteId: rowId,
  table: z.string().max(10_500_000, 'The table is larger than 10 MB. Send it in parts.'),
  from: day('the day from which plots without a day of their own are let'),
});
