import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { createPlantings, type NewPlanting } from '@/lib/data/planting';
import { settingsOn } from '@/lib/data/setting';
import { type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canEnter } from '@/lib/domain/policy/standing';
import type { CsvFault } from '@/lib/schemas/csv';
import { importPlantingsInput } from '@/lib/schemas/ground/planting';
import { type PlantingRow, readPlantingsCsv } from '@/lib/schemas/ground/plantings-csv';
import { wordsForFault } from '../csv-faults';
import { mutation } from '../operation';
import { Refused } from '../refusal';
import { forHolding } from './keep-beds';
import { openPlot } from './open-bed';
import { partOf, seasonsFor } from './place-planting';

/** Take in a table of plantings for one plot: all of it, or none with every bad cell named. */
export const importPlantings = mutation({
  name: 'import-plantings',
  allow: canEnter,
  input: importPlantingsInput,
  write: async (context, { plotId, table }) => {
    const { tx, scope, today, note } = context;
    const open = await openPlot({ db: tx, scope, today }, plotId);
    const [crops, settings, beds] = await Promise.all([
      cropsOf(tx, scope),
      settingsOn(tx, scope, today),
      bedsStanding(tx, scope, today, today, [plotId]),
    ]);
    const keys = new Map(
      [...crops.values()]
        .flatMap(
          ({ key, name }) =>
            [
              [key, key],
              [name.toLowerCase(), key],
            ] as const,
        )
        .concat([['bare', 'bare']]),
    );
    const { rows, faults } = readPlantingsCsv(table);
    const read = rows.map((row): NewPlanting | { faults: CsvFault[] } => {
      const bed = beds.find(({ name }) => name.toLowerCase() === row.bed.toLowerCase());
      const cropKey = keys.get(row.crop.toLowerCase());
      const found = [
        ...(bed
          ? []
          : [
              {
                line: row.line,
                column: 'bed',
                reason: `There is no bed ${row.bed} on this plot. It has ${beds.map(({ name }) => name).join(', ') || 'none'}.`,
              },
            ]),
        ...(cropKey ? [] : [{ line: row.line, column: 'crop', reason: `There is no crop called ${row.crop}.` }]),
      ];
      if (!bed || !cropKey) return { faults: found };
      return refusedAsFault(row, () => ({
        bedId: bed.id,
        frameId: bed.frameId,
        holdingId: open.holding?.id ?? null,
        cropKey,
        variety: row.variety,
        notes: null,
        ...daysOf(row),
        footprint: partOf(bed.footprint, row, scope.units),
        ...withPlanned(seasonsFor({ season: row.season, ...daysOf(row) }, crops.get(cropKey), settings, today), today),
      }));
    });
    const all = [...faults, ...read.flatMap((row) => ('faults' in row ? row.faults : []))];
    if (all.length)
      throw new Refused([
        { code: 'plantings-faults', numbers: { count: all.length } },
        ...all.slice(0, 50).map(wordsForFault),
      ]);
    const ids = await createPlantings(tx, scope, read as NewPlanting[]);
    note({
      verb: 'imported',
      thing: 'planting',
      thingId: null,
      ...forHolding(context, open),
      after: { plot: open.plot.number, count: ids.length },
    });
    return { recorded: ids.length };
  },
});

function daysOf({ days }: PlantingRow) {
  return days as { sownOn: CalendarDate | null; plantedOn: CalendarDate | null; clearedOn: CalendarDate | null };
}

function withPlanned(seasons: { firstSeason: number; lastSeason: number }, today: CalendarDate) {
  return { ...seasons, planned: seasons.firstSeason > Number(today.slice(0, 4)) };
}

const columnOf: Record<string, string> = { partFrom: 'from', partLength: 'length', clearedOn: 'cleared' };

function refusedAsFault<T extends object>(row: PlantingRow, work: () => T): T | { faults: CsvFault[] } {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return {
      faults: error.refusals.map(({ field = 'season' }) => ({
        line: row.line,
        column: columnOf[field] ?? field,
        reason: 'This does not fit the bed, the days or the seasons that can be recorded.',
      })),
    };
  }
}
