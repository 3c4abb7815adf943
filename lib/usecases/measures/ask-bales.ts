import 'server-only';
import { type Bale, baleOf, bales } from '@/lib/domain/catalogue/bales';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { areaOfBalesCm2, balesFor, strawRateGPerM2 } from '@/lib/domain/quantity/bales';
import type { Units } from '@/lib/domain/quantity/length';
import type { Outcome } from '../refusal';
import {
  aBaleMass,
  aChoice,
  aCount,
  anArea,
  aRate,
  aThickness,
  optional,
  readFields,
  type Typed,
  wrong,
} from './fields';

/** At what a bale weighs, and between the lightest and the heaviest that one is met at. */
type AsBalesGo = { readonly usual: number; readonly least: number; readonly most: number };

export type BalesAnswer = {
  readonly bale: Bale;
  /** What one weighs [g]: as it was said, or the middle of its range. */
  readonly baleG: number;
  readonly isSaid: boolean;
  readonly rateGPerM2: number;
  /** Where the rate follows from how thick it lies [cm], at what loose straw weighs [g/L]. */
  readonly thicknessCm: number | null;
  readonly strawGPerL: number;
  readonly found:
    | { readonly of: 'ground'; readonly areaCm2: number; readonly bales: AsBalesGo }
    | { readonly of: 'bales'; readonly bales: number; readonly areaCm2: AsBalesGo };
};

const fields = {
  bale: aChoice(bales.map(({ key }) => key)),
  baleWeight: optional(aBaleMass),
  rate: optional(aRate),
  thickness: optional(aThickness),
  area: optional(anArea),
  count: optional(aCount),
};

/** Bales for a piece of ground, or the ground that bales cover. */
export function askBales(typed: Typed, units: Units): Outcome<BalesAnswer> {
  const read = readFields(fields, typed, units);
  if (!read.ok) return read;
  const { baleWeight, rate, thickness: thicknessCm, area: areaCm2, count } = read.value;
  const [bale, straw] = [baleOf(read.value.bale), materialOf('straw')];
  if (!bale || !straw) throw new Error('the catalogue has straw, and the bale that was chosen from it');
  if ((rate === null) === (thicknessCm === null)) return wrong('one-of-two', 'rate', 'thickness');
  if ((areaCm2 === null) === (count === null)) return wrong('one-of-two', 'area', 'count');
  const rateGPerM2 = rate ?? strawRateGPerM2(thicknessCm ?? 0, straw.densityGPerL);
  const baleG = baleWeight ?? bale.massG;
  const asBalesGo = (amountOf: (oneG: number) => number): AsBalesGo => {
    const ends = (baleWeight === null ? [bale.leastG, bale.mostG] : [baleG]).map(amountOf);
    return { usual: amountOf(baleG), least: Math.min(...ends), most: Math.max(...ends) };
  };
  const found =
    areaCm2 === null
      ? {
          of: 'bales' as const,
          bales: count ?? 0,
          areaCm2: asBalesGo((oneG) => areaOfBalesCm2(count ?? 0, rateGPerM2, oneG)),
        }
      : { of: 'ground' as const, areaCm2, bales: asBalesGo((oneG) => balesFor(areaCm2, rateGPerM2, oneG)) };
  const isSaid = baleWeight !== null;
  return { ok: true, value: { bale, baleG, isSaid, rateGPerM2, thicknessCm, strawGPerL: straw.densityGPerL, found } };
}
