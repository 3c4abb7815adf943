import 'server-only';
import { type BedRecord, bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { Db } from '@/lib/data/db';
import { createPlantings, type NewPlanting } from '@/lib/data/planting';
import type { Scope } from '@/lib/data/scope';
import { settingsOn } from '@/lib/data/setting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canEnter } from '@/lib/domain/policy/standing';
import { type CsvFault, shortened } from '@/lib/schemas/csv';
import { importPlantingsInput, lookAtPlantingsInput } from '@/lib/schemas/ground/planting';
import { type PlantingRow, readPlantingsCsv } from '@/lib/schemas/ground/plantings-csv';
import { type RefusedCell, refuseFaults } from '../csv-faults';
import { mutation, query, settle } from '../operation';
import { Refused } from '../refusal';
import { openPlot, type OpenPlot } from './open-bed';
import { tellHolders } from './tell-holders';
import { partOf, seasonsFor } from './place-planting';

type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };
type Taken = { readonly row: PlantingRow; readonly planting: NewPlanting };

/** What a table of plantings would record on a plot; every bad cell named where it can't. */
async function readTable({ db, scope, today }: At, { plot, holding }: OpenPlot, table: string): Promise<Taken[]> {
  const [crops, settings, beds] = await Promise.all([
    cropsOf(db, scope),
    settingsOn(db, scope, today),
    bedsStanding(db, scope, today, today, [plot.id]),
  ]);
  const names = [...crops.values()].flatMap(({ key, name }) => [key, name.toLowerCase()].map((word) => [word, key]));
  const keys = new Map([...names, ['bare', 'bare']] as [string, string][]);
  const { rows, faults } = readPlantingsCsv(table);
  const read = rows.map((row): Taken | { faults: (CsvFault | RefusedCell)[] } => {
    const bed = beds.find(({ name }) => name.toLowerCase() === row.bed.toLowerCase());
    const cropKey = keys.get(row.crop.toLowerCase());
    if (!bed || !cropKey) return { faults: unknown(row, bed, cropKey, beds) };
    return refusedAsFault(row, () => ({
      row,
      planting: {
        bedId: bed.id,
        frameId: bed.frameId,
        holdingId: holding?.id ?? null,
        cropKey,
        variety: row.variety,
        notes: null,
        ...daysOf(row),
        footprint: partOf(bed.footprint, row, scope.units),
        ...withPlanned(seasonsFor({ season: row.season, ...daysOf(row) }, crops.get(cropKey), settings, today), today),
      },
    }));
  });
  refuseFaults('plantings-faults', [...faults, ...read.flatMap((row) => ('faults' in row ? row.faults : []))]);
  return read as Taken[];
}

function unknown(
  { line, bed, crop }: PlantingRow,
  found: BedRecord | undefined,
  cropKey: string | undefined,
  beds: readonly BedRecord[],
): CsvFault[] {
  const there = beds.map(({ name }) => name).join(', ') || 'none';
  const noBed = { line, column: 'bed', reason: `There is no bed ${shortened(bed)} on this plot. It has ${there}.` };
  const noCrop = { line, column: 'crop', reason: `There is no crop called ${shortened(crop)}.` };
  return [...(found ? [] : [noBed]), ...(cropKey ? [] : [noCrop])];
}

export type PlantingSeen = Pick<PlantingRow, 'line' | 'bed' | 'crop' | 'variety'> &
  Pick<NewPlanting, 'firstSeason' | 'lastSeason' | 'footprint'>;

/** Look at a table of plantings without recording it: what each line would record, or every bad cell. */
export const lookAtPlantings = query({
  name: 'look-at-plantings',
  allow: canEnter,
  input: lookAtPlantingsInput,
  read: async (at, { plotId, table }) => {
    const open = await openPlot(at, plotId);
    return settle(async () =>
      (await readTable(at, open, table)).map(({ row, planting }): PlantingSeen => {
        const { line, bed, crop, variety } = row;
        const { firstSeason, lastSeason, footprint } = planting;
        return { line, bed, crop, variety, firstSeason, lastSeason, footprint };
      }),
    );
  },
});

/** Take in a table of plantings for one plot: all of it, or none with every bad cell named. */
export const importPlantings = mutation({
  name: 'import-plantings',
  allow: canEnter,
  input: importPlantingsInput,
  write: async (context, { plotId, table }) => {
    const { tx, scope, today, note } = context;
    const open = await openPlot({ db: tx, scope, today }, plotId);
    const taken = await readTable({ db: tx, scope, today }, open, table);
    const ids = await createPlantings(
      tx,
      scope,
      taken.map(({ planting }) => planting),
    );
    note({
      verb: 'imported',
      thing: 'planting',
      thingId: null,
      forHoldingId: open.holding?.id ?? null,
      after: { plot: open.plot.number, count: ids.length },
    });
    await tellHolders(context, open);
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

function refusedAsFault<T extends object>(row: PlantingRow, work: () => T): T | { faults: RefusedCell[] } {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof Refused)) throw error;
    return {
      faults: error.refusals
        .filter((refusal) => refusal.code !== 'input')
        .map((refusal) => {
          const { field = 'season' } = refusal;
          return { line: row.line, column: columnOf[field] ?? field, refusal };
        }),
    };
  }
}
