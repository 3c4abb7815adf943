import 'server-only';
import type { WorkRecord } from '@/lib/data/ground-work';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type LimePurpose, type LimeTexture, limeTargets, textureOfSoil } from '@/lib/domain/catalogue/lime-tables';
import type { SoilKey } from '@/lib/domain/catalogue/soils';
import { areaCm2, type Footprint, overlap } from '@/lib/domain/ground/footprint';
import { latestDay } from '@/lib/domain/ground/work-day';
import { limeAndManure, testableFrom } from '@/lib/domain/lime/lime-and-manure';
import { dressingsOf } from '@/lib/domain/lime/lime-dressings';
import { type LimeNeed, limeNeed } from '@/lib/domain/lime/lime-need';
import { isLiming } from './food-and-lime';

export const limeGround = ['sand', 'sandy-loam', 'loam', 'silt-loam', 'clay-loam', 'peat'] as const;
export type LimeGround = LimeTexture | 'peat';
export const limeFor = ['vegetables', 'clubroot', 'potatoes'] as const;
export type LimeFor = Exclude<LimePurpose, 'peat'>;

export type LimeAsked = { readonly texture: LimeGround; readonly purpose: LimeFor; readonly ph: string };

/** A day by which something may be done, and whether today will do. */
export type LimeDay = { readonly earliestOn: CalendarDate; readonly isOpen: boolean; readonly isDayKnown: boolean };

export type LimeTold = {
  readonly asked: LimeAsked;
  /** What was typed is no pH of any soil. */
  readonly isPhWrong: boolean;
  readonly target: (typeof limeTargets)[LimePurpose];
  /** Null where nothing was asked, no target is given, or no table covers the soil. */
  readonly need: (LimeNeed & { readonly dressings: readonly number[]; readonly bedG: number }) | null;
};

/** The kind of soil that lime is reckoned for while nobody has said. */
export function limeGroundOf(soil: SoilKey): LimeGround {
  return textureOfSoil[soil] ?? 'peat';
}

/** How much lime brings a bed's ground to its target, by the pH that somebody measured. */
export function limeTold(ground: Footprint, asked: LimeAsked): LimeTold {
  const target = limeTargets[asked.texture === 'peat' && asked.purpose !== 'potatoes' ? 'peat' : asked.purpose];
  const phTenths = phFrom(asked.ph);
  const told = { asked, isPhWrong: asked.ph !== '' && phTenths === null, target };
  if (phTenths === null || !target || asked.texture === 'peat') return { ...told, need: null };
  const need = limeNeed(asked.texture, phTenths, target.leastPhTenths);
  const bedG = Math.round((need.gPerM2 * areaCm2(ground)) / 10_000);
  return { ...told, need: { ...need, dressings: dressingsOf(need.gPerM2), bedG } };
}

function phFrom(text: string): number | null {
  const typed = /^(?:ph\s*)?(\d)(?:[.,](\d))?$/i.exec(text.trim());
  const tenths = typed ? Number(typed[1]) * 10 + Number(typed[2] ?? 0) : 0;
  return tenths >= 30 && tenths <= 90 ? tenths : null;
}

/** When ground may be limed after its manure, manured after its lime, and tested after either; null where nothing holds it up. */
export function limeDays(ground: Footprint, works: readonly WorkRecord[], today: CalendarDate) {
  const here = works.filter(
    ({ footprint, kind }) => overlap(footprint, ground) && kind !== 'dug' && kind !== 'strawed',
  );
  const last = (wanted: (work: WorkRecord) => boolean) =>
    here
      .filter(wanted)
      .map((work) => ({ on: latestDay(work, today), isDayKnown: work.doneOn !== null }))
      .sort((a, b) => (a.on < b.on ? 1 : -1))[0];
  const manured = last(({ kind }) => kind === 'manured');
  const limed = last(isLiming);
  const dressed = last(() => true);
  const dayOf = (earliestOn: CalendarDate, isDayKnown: boolean): LimeDay => ({
    earliestOn,
    isDayKnown,
    isOpen: earliestOn <= today,
  });
  return {
    lime: manured && dayOf(limeAndManure({ limedOn: today, manuredOn: manured.on }).earliestOn, manured.isDayKnown),
    manure: limed && dayOf(limeAndManure({ limedOn: limed.on, manuredOn: today }).earliestOn, limed.isDayKnown),
    test: dressed && dayOf(testableFrom(dressed.on), dressed.isDayKnown),
  };
}
