import 'server-only';
import { type BedRecord, bedsStanding } from '@/lib/data/bed';
import { cropsOf } from '@/lib/data/crop';
import { plantingsOfSite } from '@/lib/data/planting';
import { type PlotOnDay, plotsEver } from '@/lib/data/plot';
import { settingsOn } from '@/lib/data/setting';
import { troublesIn } from '@/lib/data/trouble';
import { makeDate } from '@/lib/domain/calendar/calendar-date';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import { byFrame } from '@/lib/domain/ground/by-frame';
import { cultivableCm2 } from '@/lib/domain/need/need-of';
import { type Compliance, complianceOfSeason } from '@/lib/domain/rotation/compliance';
import { indexSeasons } from '@/lib/domain/rotation/season-index';
import type { ReadContext } from '../operation';
import { longestBreak, rotationSettings } from '../ground/rotation-settings';

/** A site's ground over some seasons, read at once: its compliance in any of them costs no further query. */
export type SiteGround = {
  readonly plotsIn: (season: number) => readonly PlotOnDay[];
  readonly bedById: (id: string) => BedRecord | undefined;
  readonly cropName: (key: string) => string;
  readonly settings: SettingValues;
  /** By the society's rules, or by others that it thinks of. */
  readonly complianceIn: (season: number, rules?: SettingValues) => Compliance;
};

/**
 * Read a site's ground for some seasons: five queries, whatever its size.
 *
 * @param longer  the longest break [clear years] that may be asked about, beyond those in force
 */
export async function readSiteGround(
  { db, scope, today }: ReadContext,
  siteId: string,
  seasons: { readonly from: number; readonly to: number },
  longer = 0,
): Promise<SiteGround> {
  const [settings, crops, plots] = await Promise.all([
    settingsOn(db, scope, today),
    cropsOf(db, scope),
    plotsEver(db, scope, siteId),
  ]);
  const plotIds = plots.map(({ id }) => id);
  const [beds, troubles] = await Promise.all([
    bedsStanding(db, scope, makeDate(seasons.from, 1, 1), makeDate(seasons.to, 12, 31), plotIds),
    troublesIn(db, scope, settings),
  ]);
  // A crop that stood on from an earlier season is judged from when it came.
  const from = seasons.from - Math.max(longer, longestBreak(settings, troubles)) - 2;
  const reach = { from, to: seasons.to };
  const index = indexSeasons(await plantingsOfSite(db, scope, crops, siteId, reach), reach);
  const found = byFrame(troubles);
  const bedsById = new Map(beds.map((bed) => [bed.id, bed]));
  const plotsIn = (season: number) => plots.filter((plot) => holdsOn(plot, midsummer(season, today)));
  return {
    plotsIn,
    bedById: (id) => bedsById.get(id),
    cropName: (key) => crops.get(key)?.name ?? key,
    settings,
    complianceIn: (season, rules = settings) => {
      const standing = beds.filter((bed) => holdsOn(bed, makeDate(season, 6, 24)));
      const divided = new Set(standing.map(({ plotId }) => plotId));
      const there = plotsIn(season);
      const ids = new Set(there.map(({ id }) => id));
      return complianceOfSeason({
        season,
        beds: standing.filter(({ plotId }) => ids.has(plotId)),
        undivided: there
          .filter(({ id }) => !divided.has(id))
          .map(({ id, areaCm2 }) => ({ plotId: id, areaCm2: cultivableCm2(areaCm2, rules.cultivableSharePercent) })),
        plantings: index,
        troubles: found,
        settings: rotationSettings(rules),
      });
    },
  };
}

function holdsOn({ fromOn, retiredOn }: { fromOn: string; retiredOn: string | null }, day: string): boolean {
  return fromOn <= day && (retiredOn === null || retiredOn > day);
}

/** A season is shown as its plots stood at midsummer, or stand today. */
function midsummer(season: number, today: ReadContext['today']) {
  const day = makeDate(season, 6, 24);
  return day > today ? today : day;
}
