import { type CsvFault, type CsvRow, readCsv } from '../csv';
import { optionalDay } from '../day';
import { optionalLine } from '../text';

const columns = {
  bed: ['bed name'],
  crop: ['planting', 'vegetable'],
  season: ['year'],
  variety: ['cultivar'],
  sown: ['sown on'],
  planted: ['planted on'],
  cleared: ['cleared on', 'lifted'],
  from: ['part from'],
  length: ['part length'],
};

export type PlantingRow = {
  readonly line: number;
  readonly bed: string;
  readonly crop: string;
  readonly season: number | null;
  readonly variety: string | null;
  readonly days: {
    readonly sownOn: string | null;
    readonly plantedOn: string | null;
    readonly clearedOn: string | null;
  };
  readonly partFrom: string;
  readonly partLength: string;
};

/** Read a table of plantings: a bed and a crop on each line, with its season or its days, and the part it stood on. The rows that read well come with the faults of the others. */
export function readPlantingsCsv(text: string): { rows: PlantingRow[]; faults: CsvFault[] } {
  const { rows, faults } = readCsv(text, columns, ['bed', 'crop']);
  const read = rows.map(readRow);
  const all = [...faults, ...read.flatMap((row) => ('faults' in row ? row.faults : []))];
  return { rows: read.filter((row): row is PlantingRow => !('faults' in row)), faults: all };
}

function readRow({ line, cells }: CsvRow): PlantingRow | { faults: CsvFault[] } {
  const faults: CsvFault[] = [];
  const fault = (column: string, reason: string) => void faults.push({ line, column, reason });
  const cell = (name: keyof typeof columns) => (cells[name] ?? '').trim();
  const variety = optionalLine('the variety', 60).safeParse(cell('variety'));
  if (!variety.success) fault('variety', variety.error.issues[0]?.message ?? '');
  if (!cell('bed')) fault('bed', 'Give the bed’s name.');
  if (!cell('crop')) fault('crop', 'Give the crop, or “bare”.');
  const season = /^(19|20|21)\d\d$/.test(cell('season')) ? Number(cell('season')) : null;
  if (cell('season') && season === null) fault('season', 'Give the season as a year, such as 2024.');
  const aDay = (name: 'sown' | 'planted' | 'cleared') => {
    const day = optionalDay('it').safeParse(cell(name));
    if (!day.success) fault(name, 'Give a real day from 1900 on, such as 2024-03-21 or 21/3/2024.');
    return day.data ?? null;
  };
  const days = { sownOn: aDay('sown'), plantedOn: aDay('planted'), clearedOn: aDay('cleared') };
  if (season === null && !cell('season') && !days.sownOn && !days.plantedOn && faults.length === 0)
    fault('season', 'Give the season, or the day it was sown or planted.');
  if (faults.length) return { faults };
  return {
    line,
    bed: cell('bed'),
    crop: cell('crop'),
    season,
    variety: variety.data ?? null,
    days,
    partFrom: cell('from'),
    partLength: cell('length'),
  };
}
