import { z } from 'zod';
import { csvText } from '../csv';
import { optionalDay } from '../day';
import { optionalLine, optionalNote, typedLength } from '../text';
import { form, optionalRowId, rowId, writeId } from '../write';

const cropKey = z.string({ error: 'Choose a crop.' }).trim().min(1, 'Choose a crop.').max(80, 'Choose a crop.');

const seasonWords = 'Give the season as a year, such as 2027.';
const season = z
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

const loadsWords = 'Give whole loads, 0 to 9,999, or leave it empty.';

export const logManuringInput = form({
  writeId,
  bedId: rowId,
  kind: z.enum(['manured', 'limed'], 'Say what was done.').default('manured'),
  season,
  doneOn: optionalDay('the day'),
  materialKey: optionalLine('the material', 40),
  loads: z
    .string({ error: loadsWords })
    .trim()
    .regex(/^\d{0,4}$/, loadsWords)
    .default('')
    .transform((text) => (text === '' ? null : Number(text))),
  partFrom: typedLength(),
  partLength: typedLength(),
});

export const retireManuringInput = form({ writeId, bedId: rowId, workId: rowId });
export const importPlantingsInput = form({ writeId, plotId: rowId, table: csvText });
export const lookAtPlantingsInput = importPlantingsInput.pick({ plotId: true, table: true });
