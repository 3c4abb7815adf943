import 'server-only';
import { bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { worksIn } from '@/lib/data/ground-work';
import { harvestById, harvestsOf, type LoggedHarvest } from '@/lib/data/harvest';
import { type HoldingOnDay, holdingsOfMember } from '@/lib/data/holding';
import { type PlantingRecord, plantingsIn } from '@/lib/data/planting';
import { settingsOn } from '@/lib/data/setting';
import { yearOf } from '@/lib/domain/calendar/calendar-date';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import { harvestSeason, standsOn } from '@/lib/domain/harvest/standing-crop';
import { canEnter } from '@/lib/domain/policy/standing';
import { harvestFormInput, harvestsInput } from '@/lib/schemas/harvest/harvest';
import { waitsOf } from '../ground/food-and-lime';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { bedUnder, openPlanting } from './open-planting';

/** What stands on one's own ground to log from, and what was logged of a season. */
export const readHarvests = query({
  name: 'read-harvests',
  allow: canEnter,
  input: harvestsInput,
  read: async (context, { season: asked }) => {
    const { db, scope, today } = context;
    const holdings = await holdingsOfMember(db, scope, scope.memberId, today);
    const harvests = await harvestsOf(
      db,
      scope,
      holdings.map(({ id }) => id),
    );
    const season = asked ?? yearOf(today);
    const crops = await cropsOf(db, scope);
    const shown = harvests.filter(({ planting, on }) => harvestSeason(planting, on) === season);
    return {
      today,
      season,
      units: scope.units,
      holds: holdings.some(({ plots }) => plots.length),
      seasons: [
        ...new Set([yearOf(today), season, ...harvests.map((one) => harvestSeason(one.planting, one.on))]),
      ].sort((a, b) => a - b),
      standing: await standingOn(context, holdings, harvests),
      harvests: shown.map((one) => toldHarvest(one, crops.get(one.planting.cropKey)?.name, holdings, scope.memberId)),
    };
  },
});

function toldHarvest(
  { planting, byMemberId, ...harvest }: LoggedHarvest,
  cropName: string | undefined,
  holdings: readonly HoldingOnDay[],
  viewerId: string,
) {
  const { id, plantingId, on, measure, amount, quality, notes } = harvest;
  const by = holdings.flatMap(({ members }) => members).find((member) => member.id === byMemberId);
  const { variety, bedName, plotNumber, isTakenBack, cropKey } = planting;
  return {
    ...{ id, plantingId, on, measure, amount, quality, notes },
    ...{ variety, bedName, plotNumber, isTakenBack, cropKey, cropName: cropName ?? cropKey },
    by: byMemberId === viewerId ? null : (by?.name ?? null),
  };
}

/** What stands, what was picked of last first, then what was begun last. */
async function standingOn(
  { db, scope, today }: ReadContext,
  holdings: readonly HoldingOnDay[],
  harvests: readonly LoggedHarvest[],
) {
  const plots = new Map(holdings.flatMap((holding) => holding.plots.map((plot) => [plot.id, { plot, holding }])));
  const beds = await bedsStanding(db, scope, today, today, [...plots.keys()]);
  const year = yearOf(today);
  const [crops, settings] = await Promise.all([cropsOf(db, scope), settingsOn(db, scope, today)]);
  const frames = [...new Set(beds.map(({ frameId }) => frameId))];
  const [plantings, works] = await Promise.all([
    plantingsIn(db, scope, crops, { from: year - 1, to: year + 1 }, frames),
    worksIn(db, scope, frames),
  ]);
  const waits = frames.flatMap((frameId) => {
    const here = (one: { frameId: string }) => one.frameId === frameId;
    return waitsOf(plantings.filter(here), works.filter(here), today);
  });
  const lastOn = new Map(harvests.toReversed().map(({ plantingId, on }) => [plantingId, on]));
  return plantings
    .filter((planting) => standsOn(planting, today, settings.seasonFrom))
    .flatMap((planting) => {
      const bed = bedUnder(planting, beds);
      const whose = plots.get(bed?.plotId ?? '');
      if (!bed || !whose) return [];
      const { id, cropName, variety, holdingId, firstSeason, lastSeason, footprint } = planting;
      const wait = waits.find(({ plantingId, isWorstCase }) => plantingId === id && !isWorstCase);
      return {
        ...{ id, cropName, firstSeason, lastSeason },
        variety: holdingId === whose.holding.id ? variety : null,
        bedName: bed.name,
        plotNumber: whose.plot.number,
        areaCm2: areaCm2(footprint),
        lastOn: lastOn.get(id) ?? null,
        notBefore: wait?.earliestOn ?? null,
        newest: lastOn.get(id) ?? newestDay(planting),
      };
    })
    .sort((a, b) => (a.newest < b.newest ? 1 : a.newest > b.newest ? -1 : 0))
    .map(({ newest: _, ...shown }) => shown);
}

function newestDay({ plantedOn, sownOn, firstSeason }: PlantingRecord): string {
  return plantedOn ?? sownOn ?? `${firstSeason}-01-01`;
}

/** The form of a harvest: what it comes from, whether it should wait, and the harvest that is corrected. */
export const readHarvestForm = query({
  name: 'read-harvest-form',
  allow: canEnter,
  input: harvestFormInput,
  read: async (context, { planting: plantingId, replaces }) => {
    const { db, scope, today } = context;
    const { planting, bed, plot, holding } = await openPlanting(context, plantingId);
    const corrects = replaces ? await harvestById(db, scope, replaces) : null;
    if (replaces && corrects?.holdingId !== holding.id) throw new NotFound();
    const earlier = await harvestsOf(db, scope, [holding.id], planting.cropKey);
    const works = await worksIn(db, scope, [planting.frameId]);
    return {
      today,
      units: scope.units,
      planting: {
        id: planting.id,
        cropName: planting.cropName,
        variety: planting.holdingId === holding.id ? planting.variety : null,
        firstSeason: planting.firstSeason,
        lastSeason: planting.lastSeason,
        clearedOn: planting.clearedOn,
        areaCm2: areaCm2(planting.footprint),
      },
      bed: { id: bed.id, name: bed.name },
      plotNumber: plot.number,
      /** As this crop was measured the last time. */
      measure: earlier[0]?.measure ?? 'grams',
      wait: waitsOf([planting], works, today)[0] ?? null,
      corrects: corrects && {
        id: corrects.id,
        on: corrects.on,
        measure: corrects.measure,
        amount: corrects.amount,
        quality: corrects.quality,
        notes: corrects.notes,
      },
    };
  },
});
