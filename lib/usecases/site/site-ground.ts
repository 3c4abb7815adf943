import 'server-only';
import { type BedRecord, bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { keepTallies, keptTallies, type SeasonRules, type TalliedFrame } from '@/lib/data/kept-tally';
import { leanPlantingsIn } from '@/lib/data/planting';
import { type PlotOnDay, plotsEver } from '@/lib/data/plot';
import { settingsOn } from '@/lib/data/setting';
import { troublesIn } from '@/lib/data/trouble';
import { makeDate } from '@/lib/domain/calendar/calendar-date';
import type { Crop } from '@/lib/domain/catalogue/crops';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { troubles } from '@/lib/domain/catalogue/troubles';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { cultivableCm2 } from '@/lib/domain/need/need-of';
import { addUp, type Compliance } from '@/lib/domain/rotation/compliance';
import { type FrameTally, tallyFrame, tallyMethod } from '@/lib/domain/rotation/frame-tally';
import { indexSeasons } from '@/lib/domain/rotation/season-index';
import { sha256Hex } from '@/lib/platform/secret';
import type { ReadContext } from '../operation';
import { longestBreak, rotationSettings } from '../ground/rotation-settings';

/** A site's ground over some seasons, and how its rotation holds there. */
export type SiteGround = {
  readonly plotsIn: (season: number) => readonly PlotOnDay[];
  readonly cropName: (key: string) => string;
  readonly settings: SettingValues;
  /** By the society's rules: what each frame comes to in one of the seasons that were asked for, and all of them added up. */
  readonly talliesIn: (season: number) => readonly FrameTally[];
  readonly complianceIn: (season: number) => Compliance;
  /** By rules that the society thinks of; nothing of it is kept. */
  readonly complianceBy: (rules: SettingValues, season: number) => Promise<Compliance>;
};

/**
 * Read how a site's rotation holds in some seasons. What a frame comes to in a season is kept in the database, and worked
 * out again only where its ground or a rule has changed since: a large site costs four queries and adding up.
 */
export async function readSiteGround(
  context: ReadContext,
  siteId: string,
  seasons: readonly number[],
): Promise<SiteGround> {
  const { db, scope, today } = context;
  const [settings, crops, plots] = await Promise.all([
    settingsOn(db, scope, today),
    cropsOf(db, scope),
    plotsEver(db, scope, siteId),
  ]);
  const ground: Ground = { plots, crops, settings };
  const wanted = [...new Set(seasons)].map((season) => ({ season, rules: rulesOf(context, ground, season) }));
  const frames = await keptTallies(db, scope, siteId, wanted);
  const made = await makeMissing(context, ground, frames, wanted);
  const tallyOf = ({ frameId, tallies }: TalliedFrame, season: number) =>
    tallies.get(season) ?? made.get(`${frameId} ${season}`);
  const talliesIn = (season: number) => {
    const tallies = frames.map((frame) => tallyOf(frame, season));
    if (tallies.includes(undefined)) throw new Error(`season ${season} was not asked for`);
    return tallies.filter((tally) => tally !== undefined);
  };
  return {
    plotsIn: (season) => plotsIn(context, ground, season),
    cropName: (key) => crops.get(key)?.name ?? key,
    settings,
    talliesIn,
    complianceIn: (season) => addUp(talliesIn(season)),
    complianceBy: async (rules, season) => {
      const frameIds = frames.map(({ frameId }) => frameId);
      const tally = await openGround(context, { ...ground, settings: rules }, frameIds, [season]);
      return addUp(frameIds.map((frameId) => tally(frameId, season)));
    },
  };
}

type Ground = {
  readonly plots: readonly PlotOnDay[];
  readonly crops: ReadonlyMap<string, Crop>;
  readonly settings: SettingValues;
};

/** All that a season's tally rests on beside the records of its ground, as a hash. */
function rulesOf({ today }: ReadContext, { crops, settings }: Ground, season: number): string {
  const { cultivableSharePercent, troubleYears } = settings;
  const hosts = [...crops.values()].map(({ key, hostGroups, cropGroup }) => [key, hostGroups, cropGroup]);
  const attacked = troubles.map(({ key, hosts: kinds }) => [key, kinds]);
  const rules = [tallyMethod, rotationSettings(settings), cultivableSharePercent, troubleYears, attacked, hosts];
  return sha256Hex(JSON.stringify([...rules, midsummer(season, today)]));
}

async function makeMissing(
  context: ReadContext,
  ground: Ground,
  frames: readonly TalliedFrame[],
  wanted: readonly SeasonRules[],
): Promise<ReadonlyMap<string, FrameTally>> {
  const missing = frames.flatMap(({ frameId, revision, tallies }) =>
    wanted.flatMap((one) => (tallies.has(one.season) ? [] : [{ ...one, frameId, revision }])),
  );
  if (missing.length === 0) return new Map();
  const frameIds = [...new Set(missing.map(({ frameId }) => frameId))];
  const seasons = [...new Set(missing.map(({ season }) => season))];
  const tally = await openGround(context, ground, frameIds, seasons);
  const made = missing.map((one) => ({ ...one, tally: tally(one.frameId, one.season) }));
  await keepTallies(context.db, context.scope, made);
  return new Map(made.map((one) => [`${one.frameId} ${one.season}`, one.tally]));
}

/** Read the ground of some frames, all that its rotation in some seasons is judged by: three queries, whatever its size. */
async function openGround(
  context: ReadContext,
  ground: Ground,
  frameIds: readonly string[],
  seasons: readonly number[],
): Promise<(frameId: string, season: number) => FrameTally> {
  const { db, scope } = context;
  const { plots, crops, settings } = ground;
  const [first, last] = [Math.min(...seasons), Math.max(...seasons)];
  const [beds, found] = await Promise.all([
    bedsStanding(
      db,
      scope,
      makeDate(first, 1, 1),
      makeDate(last, 12, 31),
      plots.map(({ id }) => id),
    ),
    troublesIn(db, scope, settings, frameIds),
  ]);
  // A crop that stood on from an earlier season is judged from when it came.
  const reach = { from: first - longestBreak(settings, found) - 2, to: last };
  const plantings = indexSeasons(await leanPlantingsIn(db, scope, crops, reach, frameIds), reach);
  const troublesHere = byFrame(found);
  const parts = new Map(seasons.map((season) => [season, partsIn(context, ground, beds, season)]));
  return (frameId, season) =>
    tallyFrame({
      season,
      frameId,
      beds: parts.get(season)?.beds.get(frameId) ?? [],
      undivided: parts.get(season)?.undivided.get(frameId) ?? [],
      plantings,
      troubles: troublesHere.get(frameId) ?? [],
      settings: rotationSettings(settings),
    });
}

/** What a season's ground is divided into, by frame: beds, and the cultivable ground of plots that have none drawn. */
function partsIn(context: ReadContext, ground: Ground, beds: readonly BedRecord[], season: number) {
  const there = plotsIn(context, ground, season);
  const ids = new Set(there.map(({ id }) => id));
  const standing = beds.filter((bed) => holdsOn(bed, makeDate(season, 6, 24)));
  const divided = new Set(standing.map(({ plotId }) => plotId));
  const share = ground.settings.cultivableSharePercent;
  return {
    beds: byFrame(standing.filter(({ plotId }) => ids.has(plotId))),
    undivided: byFrame(
      there
        .filter(({ id }) => !divided.has(id))
        .map(({ id, frameId, areaCm2 }) => ({ plotId: id, frameId, areaCm2: cultivableCm2(areaCm2, share) })),
    ),
  };
}

function plotsIn({ today }: ReadContext, { plots }: Ground, season: number): PlotOnDay[] {
  return plots.filter((plot) => holdsOn(plot, midsummer(season, today)));
}

function holdsOn({ fromOn, retiredOn }: { fromOn: string; retiredOn: string | null }, day: string): boolean {
  return fromOn <= day && (retiredOn === null || retiredOn > day);
}

/** A season is shown as its plots stood at midsummer, or stand today. */
function midsummer(season: number, today: ReadContext['today']) {
  const day = makeDate(season, 6, 24);
  return day > today ? today : day;
}
