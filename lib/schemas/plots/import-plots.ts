import { csvText } from '../csv';
import { day } from '../day';
import { form, rowId, writeId } from '../write';

/** A pasted or uploaded list of plots and holders. The table itself is read by `readPlotsCsv`. */
export const importPlotsInput = form({
  writeId,
  siteId: rowId,
  table: csvText,
  from: day('the day from which plots without a day of their own are let'),
});
export const lookAtPlotsInput = importPlotsInput.pick({ siteId: true, table: true });
