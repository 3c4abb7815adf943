import 'server-only';
import type { z } from 'zod';
import type { NewWork } from '@/lib/data/ground-work';
import { notManure } from '@/lib/domain/catalogue/harvest-intervals';
import { materialOf } from '@/lib/domain/catalogue/materials';
import { mealOf } from '@/lib/domain/catalogue/meals';
import type { WholeSetting } from '@/lib/domain/catalogue/setting-row';
import { areaCm2, type Footprint } from '@/lib/domain/ground/footprint';
import type { WorkKind } from '@/lib/domain/ground/work-kinds';
import type { Units } from '@/lib/domain/quantity/length';
import { readMass } from '@/lib/domain/quantity/mass';
import { massPutG } from '@/lib/domain/quantity/mass-put';
import { parseShortLength } from '@/lib/domain/quantity/short-length';
import { readTyped } from '@/lib/domain/recipe/typed-value';
import type { logWorkInput } from '@/lib/schemas/ground/work';
import { refuse } from '../refusal';

type TypedWork = z.output<typeof logWorkInput>;
type On = { readonly footprint: Footprint; readonly barrowLitres: number; readonly units: Units };
type Put = Pick<
  NewWork,
  'kind' | 'materialKey' | 'loads' | 'massG' | 'ageMonths' | 'incorporated' | 'method' | 'depthCm'
>;

/** More is no bed's dressing but a slip: a thousand tonnes [g]. */
const mostPutG = 1_000_000_000;
const leastDepthCm = 5;
const mostDepthCm = 120;

/** What a form of work says was done, one row a material; digging that went with it is a row of its own. */
export function worksTyped(typed: TypedWork, on: On): Put[] {
  const { kind, ageMonths, placed } = typed;
  const digging = diggingTyped(typed, on.units);
  if (kind === 'dug') return [{ kind, ...digging }];
  const materialKey = materialTyped(kind, typed.materialKey);
  const put = {
    kind,
    materialKey,
    ...amountTyped(typed, materialKey, on),
    ageMonths: kind === 'manured' ? ageMonths : null,
    incorporated: placed === 'dug-in',
  };
  return digging.method || digging.depthCm ? [put, { kind: 'dug', ...digging }] : [put];
}

function diggingTyped({ method, depth }: TypedWork, units: Units): { method: string | null; depthCm: number | null } {
  if (depth.trim() === '') return { method, depthCm: null };
  const read = parseShortLength(depth, units);
  if (!read.ok) refuse('length-wrong', { field: 'depth', numbers: { what: 'how deep' } });
  const depthCm = Math.round(read.tenthMm / 100);
  if (depthCm < leastDepthCm || depthCm > mostDepthCm)
    refuse('depth-out-of-range', { field: 'depth', numbers: { least: leastDepthCm, most: mostDepthCm } });
  return { method, depthCm };
}

function materialTyped(kind: Exclude<WorkKind, 'dug'>, key: string | null): string | null {
  if (kind === 'strawed') return 'straw';
  const fits =
    key === null ||
    (kind === 'manured' && materialOf(key) && !notManure.includes(key)) ||
    (kind === 'fed' && mealOf(key));
  return fits ? key : refuse('material-unknown', { field: 'materialKey' });
}

function amountTyped(
  { kind, amount, ...typed }: TypedWork,
  materialKey: string | null,
  { footprint, barrowLitres, units }: On,
): { loads: number | null; massG: number | null } {
  if (amount === '') return { loads: null, massG: null };
  const amountBy = byOf(amount, typed.amountBy, units);
  if (amountBy === 'loads') {
    if (kind === 'fed' || kind === 'limed') refuse('not-by-the-barrow', { field: 'amountBy' });
    const typedLoads = /^(\d{1,4})( ?(barrow-?)?loads?)?$/i.exec(amount);
    if (!typedLoads) return refuse('loads-wrong', { field: 'amount' });
    const loads = Number(typedLoads[1]);
    const densityGPerL = materialOf(materialKey ?? '')?.densityGPerL;
    return { loads, massG: densityGPerL ? within(massPutG({ by: 'loads', loads, barrowLitres, densityGPerL })) : null };
  }
  if (amountBy === 'weight')
    return { loads: null, massG: readMass(amount, units) ?? refuse('weight-wrong', { field: 'amount' }) };
  const rateGPerM2 = readTyped(kind === 'manured' || kind === 'strawed' ? byTheKilogram : byTheGram, amount, units);
  if (typeof rateGPerM2 !== 'number') return refuse('rate-wrong', { field: 'amount' });
  return { loads: null, massG: within(massPutG({ by: 'rate', rateGPerM2, areaCm2: areaCm2(footprint) })) };
}

// A unit that stands beside the number wins, as with lengths; but grams and ounces alone may be a rate, where one was chosen.
function byOf(amount: string, chosen: TypedWork['amountBy'], units: Units): TypedWork['amountBy'] {
  if (/load/i.test(amount)) return 'loads';
  if (chosen === 'rate' || amount.includes('/')) return 'rate';
  return /[a-z]/i.test(amount) && readMass(amount, units) !== null ? 'weight' : chosen;
}

function within(massG: number): number {
  return massG <= mostPutG ? massG : refuse('amount-too-much', { field: 'amount' });
}

// How a rate is typed where none is named: manure by the kilogram or the pound, meal and lime by the gram or the ounce.
const anyRate = { kind: 'whole', value: 0, least: 0, most: 100_000, unit: 'g/m²' } as const satisfies WholeSetting;
const byTheGram = { ...anyRate, name: 'Rate', says: '', source: 'common-practice' } as const;
const byTheKilogram = { ...byTheGram, typedIn: 'kg' } as const;
