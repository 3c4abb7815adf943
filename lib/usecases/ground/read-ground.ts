import 'server-only';
import { z } from 'zod';
import { bedsStanding, type BedRecord } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { sheetsOfHoldings } from '@/lib/data/ground-sheet';
import { worksIn } from '@/lib/data/ground-work';
import { holdingById, holdingsOfMember, holdingsOn } from '@/lib/data/holding';
import { type PlantingRecord, plantingsIn } from '@/lib/data/planting';
import { plotsOn } from '@/lib/data/plot';
import { settingsOn } from '@/lib/data/setting';
import { type TroubleRecord, troublesIn } from '@/lib/data/trouble';
import { materialOf } from '@/lib/domain/catalogue/materials';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { areaCm2, overlap } from '@/lib/domain/ground/footprint';
import { canSeePrivateRecords } from '@/lib/domain/policy/holding';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { judge } from '@/lib/domain/rotation/judge';
import { likelyLeft } from '@/lib/domain/rotation/likely-left';
import { query, type ReadContext } from '../operation';
import { NotFound } from '../refusal';
import { type Dressing, needOfPlots, seasonServed } from './holding-need';
import { isTheirs } from '../harvest/open-planting';
import { openBed, openPlot } from './open-bed';
import { troubleNearby } from '../site/read-troubles';
import { lineOf } from '../sheets/sheet-line';
import { planOf } from './plan-of';
import { judgedGroups, nameFindings, rotationSettings } from './rotation-settings';

/** The dressing by the rules in force, with horse manure as it is usually delivered. */
function routineDressing(settings: SettingValues): Dressing {
  const material = materialOf('horse-manure');
  if (!material) throw new Error('the catalogue lacks horse manure');
  return {
    barrowLitres: settings.barrowLitres,
    cultivableSharePercent: settings.cultivableSharePercent,
    materialKey: material.key,
    densityGPerL: material.densityGPerL,
    intervalYears: settings.manuringIntervalYears,
    rateGPerM2: settings.manureRateGPerM2,
  };
}

const anyHolding = z.object({
  holdingId: z.uuid().nullish(),
  season: z.coerce.number().int().min(1900).max(2199).nullish().catch(null),
});

/** One's own ground, or that of a holding the secretary keeps for: plots, beds, what stands there, and what is due. */
export const readGround = query({
  name: 'read-ground',
  allow: canEnter,
  input: anyHolding,
  read: async (context, { holdingId, season: asked }) => {
    const { db, scope, today } = context;
    const own = await holdingsOfMember(db, scope, scope.memberId, today);
    const holdings = holdingId ? await othersGround(context, holdingId, own) : own;
    const plots = await plotsOn(db, scope, today, {
      ids: holdings.flatMap((holding) => holding.plots.map(({ id }) => id)),
    });
    const settings = await settingsOn(db, scope, today);
    const season = asked ?? seasonServed(today);
    const dressing = routineDressing(settings);
    const need = await needOfPlots(
      db,
      scope,
      plots.map(({ id }) => id),
      { season: seasonServed(today), day: today, dressing },
    );
    const marks = new Map(need.lines.filter(({ turn }) => turn.dueCm2 > 0).map(({ id }) => [id, 'turn due' as const]));
    const ids = new Set(plots.map(({ id }) => id));
    const plan = await planOf(db, scope, { plots, season, sightOf: () => 'all', mine: ids, let: ids, marks });
    const everybody = canRunSociety(scope)
      ? (await holdingsOn(db, scope, today)).map(({ id, plots: held, members }) => ({
          id,
          label: `${held.map(({ number }) => number).join(', ')}: ${members.map(({ name }) => name).join(' and ')}`,
        }))
      : [];
    const nearby = await troubleNearby(context, plots);
    const sheets = await sheetsOfHoldings(
      db,
      scope,
      holdings.map(({ id }) => id),
      seasonServed(today),
    );
    const people = { holdings, everybody, nearby, isOwn: !holdingId };
    return { today, season, plan, need, dressing, units: scope.units, ...people, sheets: sheets.map(lineOf) };
  },
});

/** The ground of one holding: one's own, or any that the secretary keeps for; not found for anybody else. */
export async function othersGround(
  { db, scope, today }: ReadContext,
  holdingId: string,
  own: Awaited<ReturnType<typeof holdingsOfMember>>,
) {
  const mine = own.filter(({ id }) => id === holdingId);
  if (mine.length) return mine;
  const holding = canRunSociety(scope) ? await holdingById(db, scope, holdingId, today) : null;
  if (!holding) throw new NotFound();
  return [holding];
}

/** The grid of a plot: its beds down, seasons across, and what stood on each. */
export const readGrid = query({
  name: 'read-grid',
  allow: canEnter,
  input: z.object({ plotId: z.uuid() }),
  read: async ({ db, scope, today }, { plotId }) => {
    const { plot } = await openPlot({ db, scope, today }, plotId);
    const crops = await cropsOf(db, scope);
    const beds = await bedsStanding(db, scope, today, today, [plotId]);
    const year = Number(today.slice(0, 4));
    const seasons = Array.from({ length: 7 }, (_, at) => year - 5 + at);
    const frames = [...new Set(beds.map(({ frameId }) => frameId))];
    const standing = await plantingsIn(db, scope, crops, { from: year - 5, to: year + 1 }, frames);
    const on = (bed: BedRecord, season: number) =>
      standing.filter(
        (one) =>
          one.frameId === bed.frameId &&
          one.firstSeason <= season &&
          one.lastSeason >= season &&
          overlap(one.footprint, bed.footprint),
      );
    return {
      plot: { id: plot.id, number: plot.number },
      today,
      seasons,
      crops: choices(crops),
      beds: beds.map((bed) => ({
        id: bed.id,
        name: bed.name,
        cells: seasons.map((season) => on(bed, season).map(({ cropKey, cropName }) => ({ cropKey, cropName }))),
      })),
    };
  },
});

function choices(crops: Awaited<ReturnType<typeof cropsOf>>) {
  return [...crops.values()]
    .map(({ key, name, cropGroup }) => ({ key, name, cropGroup }))
    .sort((a, b) => a.name.localeCompare(b.name, 'en-GB'));
}

/** A bed and its ground: everything that stood there, whoever held it, its manuring, its turn, and what may follow. */
export const readBed = query({
  name: 'read-bed',
  allow: canEnter,
  input: z.object({ bedId: z.uuid() }),
  read: async ({ db, scope, today }, { bedId }) => {
    const { bed, plot, holding } = await openBed({ db, scope, today }, bedId);
    const [crops, settings] = await Promise.all([cropsOf(db, scope), settingsOn(db, scope, today)]);
    const season = seasonServed(today);
    const [all, troubles, works, beds] = await Promise.all([
      plantingsIn(db, scope, crops, { from: 1900, to: 2200 }, [bed.frameId]),
      troublesIn(db, scope, settings, [bed.frameId]),
      worksIn(db, scope, [bed.frameId]),
      bedsStanding(db, scope, today, today, [plot.id]),
    ]);
    const need = await needOfPlots(db, scope, [plot.id], { season, day: today, dressing: routineDressing(settings) });
    const isOwn = holding !== null && canSeePrivateRecords(scope, holding);
    const mayReadNotes = (holdingId: string | null) => isOwn && holdingId !== null && holdingId === holding.id;
    const here = all.filter(({ footprint }) => overlap(footprint, bed.footprint));
    const rules = rotationSettings(settings);
    const earlier = (before: number) => all.filter(({ firstSeason }) => firstSeason < before);
    const verdictOf = (planting: (typeof all)[number]) =>
      judge({
        proposal: {
          footprint: planting.footprint,
          hostGroups: planting.cropGroup === 'standing' ? [] : planting.hostGroups,
          season: planting.firstSeason,
        },
        history: earlier(planting.firstSeason).filter(({ id }) => id !== planting.id),
        troubles,
        settings: rules,
      });
    const nameOf = (key: string) => crops.get(key)?.name ?? key;
    const hostSets = [
      ...new Map(
        [...crops.values()]
          .filter((crop) => crop.key !== crop.cropGroup && judgedGroups(crop).length)
          .map((crop) => [crop.hostGroups.join(), crop]),
      ).values(),
    ];
    return {
      today,
      season,
      bed,
      units: scope.units,
      plot: { id: plot.id, number: plot.number },
      holdingId: holding?.id ?? null,
      crops: choices(crops),
      turn: need.lines.find(({ id }) => id === bed.id) ?? null,
      need,
      siblings: beds.filter(({ id }) => id !== bed.id).map(({ id, name }) => ({ id, name })),
      works: works
        .filter(({ footprint }) => overlap(footprint, bed.footprint))
        .map((work) => ({ ...work, shareCm2: sharedCm2(work.footprint, bed.footprint) })),
      plantings: here
        .map((planting) => {
          const { verdict, findings, areas } = verdictOf(planting);
          const {
            id,
            cropName,
            cropKey,
            variety,
            firstSeason,
            lastSeason,
            planned,
            sownOn,
            plantedOn,
            clearedOn,
            footprint,
          } = planting;
          const own = mayReadNotes(planting.holdingId);
          return {
            id,
            cropName,
            cropKey,
            firstSeason,
            lastSeason,
            planned,
            sownOn,
            plantedOn,
            clearedOn,
            verdict,
            areas,
            variety: own ? variety : null,
            notes: own ? planting.notes : null,
            findings: nameFindings(findings, nameOf),
            shareCm2: sharedCm2(footprint, bed.footprint),
            areaCm2: areaCm2(footprint),
            correctable: planting.bedId === bed.id,
            mayBePicked: isOwn && isTheirs(planting, holding, settings, today),
          };
        })
        .sort((a, b) => b.firstSeason - a.firstSeason),
      next: hostSets.map((crop) => {
        const { verdict, findings } = judge({
          proposal: { footprint: bed.footprint, hostGroups: crop.hostGroups, season },
          history: earlier(season),
          troubles,
          settings: rules,
        });
        return { hostGroup: crop.hostGroups[0] ?? '', verdict, findings: nameFindings(findings, nameOf) };
      }),
      troubles: troubles
        .filter(({ footprint }) => overlap(footprint, bed.footprint))
        .map((trouble) => ({
          ...trouble,
          notes: mayReadNotes(trouble.holdingId) ? trouble.notes : null,
          holdingId: null,
          shareCm2: sharedCm2(trouble.footprint, bed.footprint),
          ...outlook(trouble, all, season),
        })),
    };
  },
});

/** When a host may stand on a trouble's ground again, and what is likely left of it until then. */
function outlook(trouble: TroubleRecord, all: readonly PlantingRecord[], season: number) {
  const fedIn = all
    .filter(({ footprint }) => overlap(footprint, trouble.footprint))
    .filter(({ hostGroups, planned }) => !planned && hostGroups.some((group) => trouble.hosts.includes(group)))
    .map(({ lastSeason }) => Math.min(lastSeason, season - 1));
  const lastFed = Math.max(trouble.foundSeason, ...fedIn);
  return {
    lastFed,
    freeFrom: trouble.breakYears === null ? null : lastFed + trouble.breakYears + 1,
    left: likelyLeft(trouble.troubleKey, Math.max(0, season - 1 - lastFed)),
  };
}

function sharedCm2(a: Parameters<typeof overlap>[0], b: Parameters<typeof overlap>[0]): number {
  const shared = overlap(a, b);
  return shared ? areaCm2(shared) : 0;
}
