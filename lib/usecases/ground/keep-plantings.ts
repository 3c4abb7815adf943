import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { moveHarvests } from '@/lib/data/harvest';
import { createPlantings, type NewPlanting, plantingById, plantingsIn, retirePlantings } from '@/lib/data/planting';
import { settingsOn } from '@/lib/data/setting';
import { overlap } from '@/lib/domain/ground/footprint';
import { canEnter } from '@/lib/domain/policy/standing';
import { bareKey } from '@/lib/domain/rotation/recorded-planting';
import { fillGridInput, recordPlantingInput, retirePlantingInput } from '@/lib/schemas/ground/planting';
import { mutation, type WriteContext } from '../operation';
import { NotFound } from '../refusal';
import { openBed, openPlot } from './open-bed';
import { tellHolders } from './tell-holders';
import { cropOrBare, partOf, seasonsFor } from './place-planting';

/** Record what stands, stood or is to stand on a bed or part of it; or correct an earlier record, which is kept. */
export const recordPlanting = mutation({
  name: 'record-planting',
  allow: canEnter,
  input: recordPlantingInput,
  write: async (context, input) => {
    const { tx, scope, today, now, note } = context;
    const open = await openBed({ db: tx, scope, today }, input.bedId);
    const [crops, settings] = await Promise.all([cropsOf(tx, scope), settingsOn(tx, scope, today)]);
    const crop = cropOrBare(crops, input.cropKey);
    const seasons = seasonsFor(input, crop ?? undefined, settings, today);
    const before = input.replaces ? await plantingById(tx, scope, crops, input.replaces) : null;
    if (input.replaces && before?.bedId !== open.bed.id) throw new NotFound();
    if (before) await retirePlantings(tx, scope, [before.id], now);
    const { bedId, cropKey, variety, sownOn, plantedOn, clearedOn, notes } = input;
    const footprint = partOf(open.bed.footprint, input, scope.units);
    const planned = seasons.firstSeason > Number(today.slice(0, 4));
    const planting: NewPlanting = {
      bedId,
      cropKey,
      variety,
      sownOn,
      plantedOn,
      clearedOn,
      notes,
      footprint,
      planned,
      ...seasons,
      frameId: open.bed.frameId,
      holdingId: open.holding?.id ?? null,
    };
    const [id = ''] = await createPlantings(tx, scope, [planting]);
    if (before) await harvestsFollow(context, before.id, { id, cropKey });
    const facts = (one: { cropKey: string; firstSeason: number; footprint: object }) => ({
      crop: one.cropKey,
      season: one.firstSeason,
      bed: open.bed.name,
      ...one.footprint,
    });
    note({
      verb: before ? 'corrected' : 'recorded',
      thing: 'planting',
      thingId: id,
      forHoldingId: open.holding?.id ?? null,
      before: before && facts(before),
      after: facts(planting),
    });
    await tellHolders(context, open);
    return { plantingId: id, bedId, firstSeason: seasons.firstSeason };
  },
});

/** Take a record of a planting back; the row is kept. */
export const retirePlanting = mutation({
  name: 'retire-planting',
  allow: canEnter,
  input: retirePlantingInput,
  write: async (context, { plantingId }) => {
    const { tx, scope, today, now, note } = context;
    const planting = await plantingById(tx, scope, await cropsOf(tx, scope), plantingId);
    if (!planting) throw new NotFound();
    const open = await openBed({ db: tx, scope, today }, planting.bedId);
    await retirePlantings(tx, scope, [planting.id], now);
    note({
      verb: 'taken back',
      thing: 'planting',
      thingId: planting.id,
      forHoldingId: open.holding?.id ?? null,
      before: { crop: planting.cropKey, season: planting.firstSeason, bed: open.bed.name },
    });
    await tellHolders(context, open);
    return { bedId: planting.bedId };
  },
});

/**
 * Fill the grid of past seasons: one crop for a whole bed and season. A cell with one whole-bed record is corrected; one
 * with parts or several crops is left to the bed's own page.
 */
export const fillGrid = mutation({
  name: 'fill-grid',
  allow: canEnter,
  input: fillGridInput,
  write: async (context, { plotId, cells }) => {
    const { tx, scope, today, now, note } = context;
    const open = await openPlot({ db: tx, scope, today }, plotId);
    const [crops, settings] = await Promise.all([cropsOf(tx, scope), settingsOn(tx, scope, today)]);
    const beds = new Map((await bedsStanding(tx, scope, today, today, [plotId])).map((bed) => [bed.id, bed]));
    const years = cells.map(({ season }) => season);
    const frames = [...new Set([...beds.values()].map(({ frameId }) => frameId))];
    const standing = years.length
      ? await plantingsIn(tx, scope, crops, { from: Math.min(...years), to: Math.max(...years) }, frames)
      : [];
    const filled = cells
      .filter(({ cropKey }) => cropKey !== '')
      .flatMap(({ bedId, season, cropKey }) => {
        const bed = beds.get(bedId);
        if (!bed) throw new NotFound();
        const field = `c:${bedId}:${season}`;
        const crop = cropOrBare(crops, cropKey, field);
        const here = standing.filter(
          (one) =>
            one.frameId === bed.frameId &&
            one.firstSeason <= season &&
            one.lastSeason >= season &&
            overlap(one.footprint, bed.footprint),
        );
        if (here.length > 1 || here[0]?.cropKey === cropKey) return [];
        const seasons = seasonsFor(
          { season, sownOn: null, plantedOn: null, clearedOn: null },
          crop ?? undefined,
          settings,
          today,
          field,
        );
        const planting: NewPlanting = {
          bedId,
          cropKey,
          variety: null,
          sownOn: null,
          plantedOn: null,
          clearedOn: null,
          notes: null,
          ...seasons,
          frameId: bed.frameId,
          footprint: bed.footprint,
          holdingId: open.holding?.id ?? null,
          planned: seasons.firstSeason > Number(today.slice(0, 4)),
        };
        return [{ planting, before: here[0] ?? null }];
      });
    await retirePlantings(
      tx,
      scope,
      filled.flatMap(({ before }) => (before ? [before.id] : [])),
      now,
    );
    const ids = await createPlantings(
      tx,
      scope,
      filled.map(({ planting }) => planting),
    );
    for (const [at, { planting, before }] of filled.entries()) {
      if (before) await harvestsFollow(context, before.id, { id: ids[at] ?? '', cropKey: planting.cropKey });
      const after = { crop: planting.cropKey, season: planting.firstSeason, bed: beds.get(planting.bedId)?.name ?? '' };
      note({
        verb: before ? 'corrected' : 'recorded',
        thing: 'planting',
        thingId: ids[at] ?? null,
        forHoldingId: open.holding?.id ?? null,
        before: before && { crop: before.cropKey, season: before.firstSeason },
        after,
      });
    }
    await tellHolders(context, open);
    return { recorded: filled.length };
  },
});

// What was picked was picked of what truly stood there; of bare ground nothing was.
async function harvestsFollow(
  { tx, scope }: WriteContext,
  fromId: string,
  { id, cropKey }: { readonly id: string; readonly cropKey: string },
): Promise<void> {
  if (cropKey !== bareKey) await moveHarvests(tx, scope, fromId, id);
}
