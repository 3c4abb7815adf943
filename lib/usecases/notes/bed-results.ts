import 'server-only';
import type { Db } from '@/lib/data/db';
import { worksIn } from '@/lib/data/ground-work';
import { harvestsOf, type LoggedHarvest } from '@/lib/data/harvest';
import { holdingsOfMember } from '@/lib/data/holding';
import { plantingsIn } from '@/lib/data/planting';
import { sharingHoldings } from '@/lib/data/result-sharing';
import type { Scope } from '@/lib/data/scope';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Crop } from '@/lib/domain/catalogue/crops';
import type { BedResult } from '@/lib/domain/comparison/bed-result';
import { begunWeeks } from '@/lib/domain/comparison/begun-weeks';
import { type PlantingYield, plantingYields } from '@/lib/domain/comparison/planting-yields';
import { diggingOf, type LoggedWork, manuringOf } from '@/lib/domain/comparison/treated-as';
import { yearsSinceGroup } from '@/lib/domain/comparison/years-since-group';
import { byFrame } from '@/lib/domain/ground/by-frame';
import type { RecordedPlanting } from '@/lib/domain/rotation/recorded-planting';
import { plantingsOf, standing } from '../harvest/yields-of';

export type At = { readonly db: Db; readonly scope: Scope; readonly today: CalendarDate };

/** A result with the names of its place, which none but its own holders are told. */
export type PlacedResult = BedResult & {
  readonly plantingId: string;
  readonly bedName: string;
  readonly plotNumber: string;
  readonly variety: string | null;
};

/** One that is not to be compared, and why. */
export type LeftOut = Pick<BedResult, 'holdingId' | 'isOwn' | 'isShared' | 'season'> & {
  readonly why: 'standing' | 'counted';
};

/** Whose results the viewer may be told of: those that are shared, and their own. */
export async function resultHoldings({ db, scope, today }: At) {
  const [shared, own] = await Promise.all([
    sharingHoldings(db, scope, today),
    holdingsOfMember(db, scope, scope.memberId, today),
  ]);
  return { shared, own: new Set(own.map(({ id }) => id)) };
}

export type ResultHoldings = Awaited<ReturnType<typeof resultHoldings>>;

/** What one crop gave on the ground of those holdings in every season, and how each bed was treated, by its records. */
export async function bedResults(
  at: At,
  { shared, own }: ResultHoldings,
  crops: ReadonlyMap<string, Crop>,
  cropKey: string,
): Promise<{ results: PlacedResult[]; leftOut: LeftOut[] }> {
  const { db, scope, today } = at;
  const harvests = standing(await harvestsOf(db, scope, [...new Set([...shared, ...own])], cropKey)).filter(isGrown);
  const of = new Map(harvests.map((one) => [one.planting.id, one]));
  const yields = plantingYields(plantingsOf(harvests), harvests, today);
  const ground = await groundOf(at, crops, [...of.values()]);
  const all = yields.flatMap((one) => {
    const harvest = of.get(one.plantingId);
    if (!harvest) return [];
    const { holdingId } = harvest;
    return [{ one, harvest, whose: { holdingId, isOwn: own.has(holdingId), isShared: shared.has(holdingId) } }];
  });
  return {
    results: all.flatMap(({ one, harvest, whose }) =>
      one.gPerM2 === null ? [] : [{ ...whose, ...told(harvest, one, crops, ground) }],
    ),
    leftOut: all.flatMap(({ one: { leftOut, season }, whose }) =>
      leftOut === null ? [] : [{ ...whose, season, why: leftOut }],
    ),
  };
}

// Of what somebody else had sown the harvest is only a part, and how it was begun is theirs.
function isGrown({ holdingId, planting }: LoggedHarvest): boolean {
  return planting.holdingId === null || planting.holdingId === holdingId;
}

type Ground = {
  readonly works: ReadonlyMap<string, readonly LoggedWork[]>;
  readonly history: ReadonlyMap<string, readonly RecordedPlanting[]>;
};

async function groundOf(
  { db, scope }: At,
  crops: ReadonlyMap<string, Crop>,
  harvests: readonly LoggedHarvest[],
): Promise<Ground> {
  const frames = [...new Set(harvests.map(({ planting }) => planting.frameId))];
  const seasons = harvests.flatMap(({ planting: { firstSeason, lastSeason } }) => [firstSeason, lastSeason]);
  const reach = { from: Math.min(...seasons) - 4, to: Math.max(...seasons) };
  if (frames.length === 0) return { works: new Map(), history: new Map() };
  const [works, plantings] = await Promise.all([
    worksIn(db, scope, frames),
    plantingsIn(db, scope, crops, reach, frames),
  ]);
  return { works: byFrame(works), history: byFrame(plantings) };
}

function told(
  { planting }: LoggedHarvest,
  { season, gPerM2 }: Pick<PlantingYield, 'season' | 'gPerM2'>,
  crops: ReadonlyMap<string, Crop>,
  ground: Ground,
) {
  const { id, frameId, footprint, plotId, bedName, plotNumber, variety, firstSeason, cropKey } = planting;
  const works = ground.works.get(frameId) ?? [];
  const history = (ground.history.get(frameId) ?? []).filter((one) => one.id !== id);
  const hosts = crops.get(cropKey)?.hostGroups ?? [];
  return {
    ...{ plantingId: id, plotId, season, bedName, plotNumber, variety },
    gPerM2: gPerM2 ?? 0,
    groupOf: {
      digging: diggingOf(footprint, season, works),
      manure: manuringOf(footprint, season, works),
      'years-since': yearsSinceGroup(footprint, firstSeason, hosts, history),
      sowing: begunWeeks(firstSeason, planting),
      variety: variety && (variety.trim().toLocaleLowerCase('en-GB') || null),
      season: String(season),
    },
  };
}
