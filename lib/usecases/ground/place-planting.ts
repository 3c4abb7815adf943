import 'server-only';
import { openSeason } from '@/lib/data/planting';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { lastSeasonOf } from '@/lib/domain/calendar/last-season-of';
import { seasonsOf, type SeasonWindow } from '@/lib/domain/calendar/season-of';
import type { SettingValues } from '@/lib/domain/catalogue/settings';
import type { Crop } from '@/lib/domain/catalogue/crops';
import type { Footprint } from '@/lib/domain/ground/footprint';
import { begunOn, type Growing } from '@/lib/domain/harvest/standing-crop';
import type { Units } from '@/lib/domain/quantity/length';
import { bareKey } from '@/lib/domain/rotation/recorded-planting';
import { refuse } from '../refusal';
import { readLengths } from './measure';

/** The part of a bed that a planting stands on: all of it, or a stretch along its length from the top end. */
export function partOf(bed: Footprint, typed: { partFrom: string; partLength: string }, units: Units): Footprint {
  if (typed.partFrom.trim() === '' && typed.partLength.trim() === '') return bed;
  const read = readLengths(
    {
      from: { field: 'partFrom', what: 'where it begins', text: typed.partFrom.trim() || '0 cm' },
      length: { field: 'partLength', what: 'how long it is', text: typed.partLength.trim() || `${bed.lengthCm} cm` },
    },
    units,
  );
  const [from, upTo] = [Math.round(read.from / 100), Math.round((read.from + read.length) / 100)];
  const end = typed.partLength.trim() === '' ? bed.lengthCm : upTo;
  const atFault = from >= bed.lengthCm || typed.partLength.trim() === '' ? 'partFrom' : 'partLength';
  if (end > bed.lengthCm || end <= from) refuse('part-outside-bed', { field: atFault });
  return { ...bed, yCm: bed.yCm + from, lengthCm: end - from };
}

type Days = { sownOn: CalendarDate | null; plantedOn: CalendarDate | null; clearedOn: CalendarDate | null };

/** The seasons that a planting counts for: by its days where given, else the season that was named. */
export function seasonsFor(
  given: Days & { season: number | null },
  crop: Crop | undefined,
  settings: SettingValues,
  today: CalendarDate,
  field = 'season',
): { firstSeason: number; lastSeason: number } {
  const { season, ...days } = given;
  const begun = [days.sownOn, days.plantedOn].filter((one) => one !== null).sort()[0];
  if (days.clearedOn && begun && days.clearedOn < begun) refuse('cleared-before-sown', { field: 'clearedOn' });
  if (begun) return withStanding(seasonsOf({ ...days, window: windowOf(settings) }), crop, days);
  if (season === null) refuse('day-or-season', { field: 'season' });
  const most = Number(today.slice(0, 4)) + 6;
  if (season > most) refuse('season-out-of-range', { field, numbers: { least: 1900, most } });
  return withStanding({ firstSeason: season, lastSeason: season }, crop, days);
}

/** The seasons of a planting once it is cleared: by its days where they are on record, else from the season it was recorded for. */
export function seasonsCleared(
  planting: Growing,
  clearedOn: CalendarDate,
  settings: SettingValues,
): { firstSeason: number; lastSeason: number } {
  const { sownOn, plantedOn, firstSeason } = planting;
  const window = windowOf(settings);
  return begunOn(planting)
    ? seasonsOf({ sownOn, plantedOn, clearedOn, window })
    : { firstSeason, lastSeason: lastSeasonOf(firstSeason, clearedOn, window) };
}

// Rhubarb holds its ground until it is cleared.
function withStanding(
  seasons: { firstSeason: number; lastSeason: number },
  crop: Crop | undefined,
  { clearedOn }: Days,
) {
  return crop?.stands && clearedOn === null ? { ...seasons, lastSeason: openSeason } : seasons;
}

/** The season window as the society sets it. */
function windowOf({ seasonFrom, seasonTo }: SettingValues): SeasonWindow {
  return { fromMonthDay: seasonFrom, toMonthDay: seasonTo };
}

/** The crop of a key, or null for bare ground; a key that nobody knows is refused. */
export function cropOrBare(crops: ReadonlyMap<string, Crop>, key: string, field = 'cropKey'): Crop | null {
  if (key === bareKey) return null;
  return crops.get(key) ?? refuse('crop-unknown', { field, numbers: { crop: key } });
}
