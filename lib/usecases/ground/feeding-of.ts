import 'server-only';
import type { WorkRecord } from '@/lib/data/ground-work';
import { type CalendarDate, withinYears } from '@/lib/domain/calendar/calendar-date';
import { nutrientContentsOf } from '@/lib/domain/catalogue/nutrient-contents';
import { hectareLimit } from '@/lib/domain/catalogue/nitrogen-limits';
import { type SoilKey, soilOf } from '@/lib/domain/catalogue/soils';
import { areaCm2, type Footprint, overlap } from '@/lib/domain/ground/footprint';
import { bedBalances, type CropOnGround } from '@/lib/domain/nutrients/bed-balance';
import { type DressingOn, dressingOn } from '@/lib/domain/nutrients/dressing-on';
import { loggedOnce } from '@/lib/domain/nutrients/logged-once';
import { nitrogenOver } from '@/lib/domain/nutrients/nitrogen-over';
import { rateWithin } from '@/lib/domain/nutrients/rate-within';

/** What is asked about a bed's feeding: all works are of its frame. */
export type FeedingAsked = {
  readonly ground: Footprint;
  readonly season: number;
  readonly today: CalendarDate;
  readonly soil: SoilKey;
  readonly works: readonly WorkRecord[];
  readonly crops: readonly CropOnGround[];
  readonly intervalYears: number;
};

/** Manure of which the usual load is, where none is on record for the bed. */
const usualManure = 'horse-manure';

/**
 * What a bed was fed: its dressings of the last twelve months and of the season, what they supply beside what the season's crops
 * demand, and how all of them stand to the guidance on nitrogen. Straw is left out: it brings next to nothing.
 */
export function feedingOf({ ground, season, today, soil, works, crops, intervalYears }: FeedingAsked) {
  const column = soilOf(soil)?.manureSoil ?? 'medium-heavy';
  const dressings = loggedOnce(works)
    .filter(({ kind }) => kind === 'manured' || kind === 'fed')
    .filter(({ footprint }) => overlap(footprint, ground))
    .map((work) => dressingOn(work, column));
  const isLate = ({ on }: DressingOn) => withinYears(on, today, 1);
  return {
    dressings: dressings
      .filter((one) => isLate(one) || one.work.season === season)
      .map((one) => ({ ...one, shareCm2: sharedCm2(one.work.footprint, ground) }))
      .sort((a, b) => (a.on < b.on ? 1 : -1)),
    pieces: bedBalances({ ground, season, dressings, crops }),
    nitrogen: {
      ...over(ground, dressings, intervalYears),
      ...ratesThatKeep(ground, dressings, dressings.filter(isLate), intervalYears),
      isRecorded: dressings.length > 0,
    },
  };
}

function over(ground: Footprint, dressings: readonly DressingOn[], intervalYears: number) {
  const brought = dressings.map(({ work, on, supply }) => ({
    on,
    footprint: work.footprint,
    nitrogenMgPerM2: supply?.nitrogen?.mgPerM2 ?? null,
  }));
  const { pieces, ...sums } = nitrogenOver(ground, brought, intervalYears);
  const worst = pieces.find(({ mgPerM2 }) => mgPerM2 === sums.worstMgPerM2);
  return { ...sums, from: worst?.from ?? null, through: worst?.through ?? null, intervalYears };
}

/** The dressing that keeps the guidance: what there is room for now, in a clear year, and as the one dressing of a rotation. */
function ratesThatKeep(
  ground: Footprint,
  dressings: readonly DressingOn[],
  lately: readonly DressingOn[],
  intervalYears: number,
) {
  const known = dressings.map(({ work }) => work.materialKey).find((key) => key && nutrientContentsOf(key)?.nitrogen);
  const materialKey = known ?? usualManure;
  const hadMgPerM2 = over(ground, lately, intervalYears).worstMgPerM2;
  const { kgPerHa } = hectareLimit;
  return {
    materialKey,
    hadMgPerM2,
    isHadKnown: lately.every(({ supply }) => supply?.nitrogen),
    now: rateWithin(materialKey, kgPerHa, hadMgPerM2),
    clearYear: rateWithin(materialKey, kgPerHa),
    overRotation: rateWithin(materialKey, kgPerHa, 0, intervalYears),
  };
}

function sharedCm2(a: Footprint, b: Footprint): number {
  const shared = overlap(a, b);
  return shared ? areaCm2(shared) : 0;
}
