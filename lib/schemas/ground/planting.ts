import { z } from 'zod';
import { csvText } from '../csv';
import { optionalDay } from '../day';
import { optionalLine, optionalNote } from '../text';
import { rowId, writeId } from '../write';

const typed = z.string().max(40, 'That is too long for a length.').default('');
const cropKey = z.string({ error: 'Choose a crop.' }).trim().min(1, 'Choose a crop.').max(80, 'Choose a crop.');

const seasonWords = 'Give the season as a year, such as 2027.';
const season = z
  .string({ error: seasonWords })
  .trim()
  .regex(/^(19|20|21)\d\d$/, seasonWords)
  .transform(Number);
const optionalSeason = z.union([z.literal('').transform(() => null), season]).default(null);

/** A planting to be judged, from an address. */
export const judgeInput = z.object({
  bedId: z.uuid(),
  cropKey: z.string().max(80),
  season,
  partFrom: typed,
  partLength: typed,
});

export const recordPlantingInput = z.strictObject({
  writeId,
  bedId: rowId,
  replaces: z.union([z.literal('').transform(() => null), rowId]).default(null),
  cropKey,
  variety: optionalLine('the variety', 60),
  season: optionalSeason,
  sownOn: optionalDay('the day of sowing'),
  plantedOn: optionalDay('the day of planting'),
  clearedOn: optionalDay('the day of clearing'),
  partFrom: typed,
  partLength: typed,
  notes: optionalNote('the notes'),
});

export const retirePlantingInput = z.strictObject({ writeId, plantingId: rowId });

/** The grid: one crop key for each bed and season, named `c:<bed id>:<season>`; empty leaves the cell as it is. */
export const fillGridInput = z.strictObject({
  writeId,
  plotId: rowId,
  cells: z
    .array(z.strictObject({ bedId: rowId, season: z.number().int(), cropKey: z.string().max(80) }))
    .max(600, 'That is more than one grid holds.'),
});

export const logManuringInput = z.strictObject({
  writeId,
  bedId: rowId,
  season,
  doneOn: optionalDay('the day'),
  materialKey: optionalLine('the material', 40),
  loads: z
    .string()
    .trim()
    .regex(/^\d{0,4}$/, 'Give whole loads, 0 to 9,999, or leave it empty.')
    .default('')
    .transform((text) => (text === '' ? null : Number(text))),
  partFrom: typed,
  partLength: typed,
});

export const retireManuringInput = z.strictObject({ writeId, bedId: rowId, workId: rowId });
export const importPlantingsInput = z.strictObject({ writeId, plotId: rowId, table: csvText });
export const lookAtPlantingsInput = importPlantingsInput.pick({ plotId: true, table: true });
