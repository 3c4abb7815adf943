import 'server-only';
import { bedById } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import type { Db } from '@/lib/data/db';
import { deliveryById } from '@/lib/data/delivery';
import { holdingOfPlot } from '@/lib/data/holding';
import { plantingsIn } from '@/lib/data/planting';
import { plotById } from '@/lib/data/plot';
import type { Scope } from '@/lib/data/scope';
import { settingsOn } from '@/lib/data/setting';
import { type Named, typedTopic } from '@/lib/domain/board/topic';
import { type CalendarDate, daysBetween, isCalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { Crop } from '@/lib/domain/catalogue/crops';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { troubleOf } from '@/lib/domain/catalogue/troubles';
import type { DeliveryState } from '@/lib/domain/delivery/steps';
import { overlap } from '@/lib/domain/ground/footprint';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import { canKeepGround } from '@/lib/domain/policy/holding';
import { sightOf } from '@/lib/domain/policy/sight';
import { resultsState, type ResultsState } from '../notes/results-state';

type At = { readonly db: Db; readonly scope: Scope; readonly now: Date; readonly today: CalendarDate };

/** What is read once, however many things are asked about. */
type Site = { readonly crops: ReadonlyMap<string, Crop>; readonly settings: SettingValues };

/** How a thing of the site stands now, as far as the viewer may see it. */
export type TopicState = Named &
  (
    | { readonly kind: 'crop'; readonly name: string; readonly group: string; readonly breakYears: number | null }
    | {
        readonly kind: 'delivery';
        readonly name: string;
        readonly state: DeliveryState;
        readonly arrivesOn: CalendarDate;
      }
    | {
        readonly kind: 'bed';
        readonly name: string;
        readonly plotNumber: string;
        readonly isOwn: boolean;
        readonly season: number;
        /** Null where neighbours are not told; none where nothing is recorded. */
        readonly standing: readonly string[] | null;
        /** Keys of the crops, on one’s own ground alone. */
        readonly ownCrops: readonly string[];
      }
    | ({ readonly kind: 'results' } & ResultsState)
    | { readonly kind: 'trouble'; readonly name: string; readonly clearYears: number | null }
    | { readonly kind: 'date'; readonly on: CalendarDate; readonly inDays: number }
  );

/** How several things stand; what is gone, or not there for the viewer, is left out. */
export async function topicStates(at: At, topics: readonly Named[]): Promise<TopicState[]> {
  const each = new Map(topics.map((topic) => [typedTopic(topic), topic]));
  if (each.size === 0) return [];
  const [crops, settings] = await Promise.all([cropsOf(at.db, at.scope), settingsOn(at.db, at.scope, at.today)]);
  const found = await Promise.all([...each.values()].map((topic) => stateOf(at, { crops, settings }, topic)));
  return found.filter((state) => state !== null);
}

/** How one thing stands, or null. */
export async function topicState(at: At, topic: Named): Promise<TopicState | null> {
  return (await topicStates(at, [topic]))[0] ?? null;
}

async function stateOf(at: At, site: Site, { kind, key }: Named): Promise<TopicState | null> {
  if (kind === 'crop') return cropState(site, key);
  if (kind === 'bed') return bedState(at, site, key);
  if (kind === 'delivery') return deliveryState(at, key);
  if (kind === 'trouble') return troubleState(site, key);
  if (kind === 'results') {
    const state = await resultsState(at, site.crops, key);
    return state && { kind, key, ...state };
  }
  return isCalendarDate(key) ? { kind, key, on: key, inDays: daysBetween(at.today, key) } : null;
}

function cropState({ crops, settings: { breakYears } }: Site, key: string): TopicState | null {
  const crop = crops.get(key);
  if (!crop) return null;
  const breaks = crop.hostGroups.map((host) => breakYears[host] ?? 0);
  return {
    ...{ kind: 'crop', key, name: crop.name },
    group: cropGroupName(crop.cropGroup),
    breakYears: breaks.length ? Math.max(...breaks) : null,
  };
}

async function deliveryState({ db, scope, now }: At, key: string): Promise<TopicState | null> {
  const delivery = await deliveryById(db, scope, key, now);
  if (!delivery || !canSeeDelivery(scope, delivery)) return null;
  const { name, state, arrivesOn } = delivery;
  return { kind: 'delivery', key, name, state, arrivesOn };
}

function troubleState({ settings: { troubleYears } }: Site, key: string): TopicState | null {
  const trouble = troubleOf(key);
  return trouble === undefined
    ? null
    : { kind: 'trouble', key, name: trouble.name, clearYears: troubleYears[key] ?? null };
}

async function bedState({ db, scope, today }: At, { crops, settings }: Site, key: string): Promise<TopicState | null> {
  const bed = await bedById(db, scope, key);
  const plot = bed && (await plotById(db, scope, bed.plotId));
  if (!bed || !plot) return null;
  const holding = await holdingOfPlot(db, scope, plot.id, today);
  const isOwn = canKeepGround(scope, holding);
  const season = Number(today.slice(0, 4));
  const sight = sightOf(scope, settings.neighboursSee, isOwn);
  const there = (await plantingsIn(db, scope, crops, { from: season, to: season }, [bed.frameId])).filter((planting) =>
    overlap(planting.footprint, bed.footprint),
  );
  const named = there.map(({ cropName, cropGroup }) =>
    sight === 'group' ? cropGroup && cropGroupName(cropGroup) : cropName,
  );
  const standing = sight === 'nothing' ? null : [...new Set(named.filter((name) => name !== null))];
  const ownCrops = holding?.memberIds.includes(scope.memberId) ? keysOf(there, crops) : [];
  return { kind: 'bed', key, name: bed.name, plotNumber: plot.number, isOwn, season, standing, ownCrops };
}

function keysOf(plantings: readonly { readonly cropKey: string }[], crops: Site['crops']): string[] {
  return [...new Set(plantings.map(({ cropKey }) => cropKey))].filter((key) => crops.has(key));
}
