import { z } from 'zod';
import { csvText } from '../csv';
import { optionalDay } from '../day';
import { optionalLine, optionalNote, typedLength } from '../text';
import { form, optionalRowId, rowId, writeId } from '../write';

const cropKey = z.string({ error: 'Choose a crop.' }).trim().min(1, 'Choose a crop.').max(80, 'Choose a crop.');

const seasonWords = 'Give the season as a year, such as 2027.';
/** A season as it is typed: a year. */
export const season = z
  .string({ error: seasonWords })
  .trim()
  .regex(/^(19|20|21)\d\d$/, seasonWords)
  .transform(Number);
const optionalSeason = z.union([z.literal('').transform(() => null), season], { error: seasonWords }).default(null);

/** A planting to be judged, from an address. */
export const judgeInput = z.object({
  bedId: z.uuid(),
  cropKey: z.string().max(80),
  season,
  partFrom: typedLength(),
  partLength: typedLength(),
});

export const recordPlantingInput = form({
  writeId,
  bedId: rowId,
  replaces: optionalRowId,
  cropKey,
  variety: optionalLine('the variety', 60),
  season: optionalSeason,
  sownOn: optionalDay('the day of sowing'),
  plantedOn: optionalDay('the day of planting'),
  clearedOn: optionalDay('the day of clearing'),
  partFrom: typedLength(),
  partLength: typedLength(),
  notes: optionalNote('the notes'),
});

export const retirePlantingInput = form({ writeId, plantingId: rowId });

const cellSeason = z.number(seasonWords).int(seasonWords).min(1900, seasonWords).max(2199, seasonWords);
const cellCrop = z.string({ error: 'Choose a crop.' }).max(80, 'Choose a crop.');

/** The grid: one crop key for each bed and season, named `c:<bed id>:<season>`; empty leaves the cell as it is. */
export const fillGridInput = form({
  writeId,
  plotId: rowId,
  cells: z
    .array(form({ bedId: rowId, season: cellSeason, cropKey: cellCrop }), {
      error: 'Choose a crop for each bed and season.',
    })
    .max(600, 'That is more than one grid holds.'),
});

export const importPlantingsInput = form({ writeId, plotId: rowId, table: csvText });
export const lookAtPlantingsInput = importPlantingsInput.pick({ plotId: true, table: true });
