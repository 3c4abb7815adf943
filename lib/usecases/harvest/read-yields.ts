import 'server-only';
import { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import { harvestsOf, type LoggedHarvest } from '@/lib/data/harvest';
import { holdingsOfMember } from '@/lib/data/holding';
import { pieceWeightG } from '@/lib/domain/harvest/piece-weight';
import { yieldsSaidOf } from '@/lib/domain/harvest/published-yield';
import { seasonYields } from '@/lib/domain/harvest/season-yields';
import { harvestSeason } from '@/lib/domain/harvest/standing-crop';
import { canEnter } from '@/lib/domain/policy/standing';
import { toCsv } from '@/lib/platform/csv';
import { query, type ReadContext } from '../operation';
import { plantingsOf, standing } from './yields-of';

/** What one's own ground yielded, by crop, season and bed, with what is printed beside it. */
export const readYields = query({
  name: 'read-yields',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const { scope, today } = context;
    const harvests = standing(await ownHarvests(context));
    const places = new Map(harvests.map(({ planting }) => [planting.bedId, planting]));
    const nameOf = await cropNames(context);
    const yields = seasonYields(plantingsOf(harvests), harvests, today).toReversed();
    const crops = [...new Set(yields.map(({ cropKey }) => cropKey))].map((cropKey) => ({
      cropKey,
      name: nameOf(cropKey),
      pieceG: pieceWeightG(cropKey),
      said: yieldsSaidOf(cropKey),
      yields: yields
        .filter((one) => one.cropKey === cropKey)
        .map((one) => ({
          ...one,
          bedName: places.get(one.bedId)?.bedName ?? '',
          plotNumber: places.get(one.bedId)?.plotNumber ?? '',
        })),
    }));
    const plots = new Set(harvests.map(({ planting }) => planting.plotNumber));
    return {
      units: scope.units,
      onSeveralPlots: plots.size > 1,
      crops: crops.toSorted((a, b) => a.name.localeCompare(b.name, 'en-GB')),
    };
  },
});

const columns = ['day', 'plot', 'bed', 'crop', 'variety', 'season', 'weight g', 'pieces', 'quality', 'ground m²'];

/** One's own harvests as a table for any spreadsheet, the newest first. */
export const readHarvestsCsv = query({
  name: 'read-harvests-csv',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => {
    const harvests = await ownHarvests(context);
    const nameOf = await cropNames(context);
    return {
      name: `harvests-to-${context.today}.csv`,
      text: toCsv(
        [...columns, 'notes'],
        harvests.map((one) => lineOf(one, nameOf(one.planting.cropKey))),
      ),
    };
  },
});

function lineOf({ planting, on, measure, amount, quality, notes }: LoggedHarvest, crop: string): (string | number)[] {
  const { plotNumber, bedName, variety, areaCm2 } = planting;
  const [grams, pieces] = measure === 'grams' ? [amount, ''] : ['', amount];
  const whence = [plotNumber, bedName, crop, variety ?? '', harvestSeason(planting, on)];
  return [on, ...whence, grams, pieces, quality, areaCm2 / 10_000, notes ?? ''];
}

async function ownHarvests({ db, scope, today }: ReadContext): Promise<LoggedHarvest[]> {
  const holdings = await holdingsOfMember(db, scope, scope.memberId, today);
  return harvestsOf(
    db,
    scope,
    holdings.map(({ id }) => id),
  );
}

async function cropNames({ db, scope }: ReadContext): Promise<(key: string) => string> {
  const crops = await cropsOf(db, scope);
  return (key) => crops.get(key)?.name ?? key;
}
