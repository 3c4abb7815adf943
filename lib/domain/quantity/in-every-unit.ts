import { squareFootCm2, squareRodCm2, squareYardCm2 } from './area';
import { type RateUnit, rateIn, rateUnits } from './area-rate';
import { cwtG, ounceG, poundG, tonG } from './mass';

/** An amount, and the unit that it is in. */
export type Amount = { readonly amount: number; readonly unit: string };

/** What one of each unit is, in tenths of a millimetre, square centimetres and grams. */
const lengths = { m: 10_000, cm: 100, mm: 10, ft: 3048, in: 254, yd: 9144, rods: 5.5 * 9144 } as const;
const areas = {
  'm²': 10_000,
  ha: 100_000_000,
  'sq ft': squareFootCm2,
  'sq yd': squareYardCm2,
  'sq rods': squareRodCm2,
  acres: 160 * squareRodCm2,
} as const;
const masses = { g: 1, kg: 1000, t: 1_000_000, oz: ounceG, lb: poundG, cwt: cwtG, tons: tonG } as const;

function inEvery(units: Readonly<Record<string, number>>, value: number): Amount[] {
  if (!(value >= 0 && value <= 1e15)) throw new RangeError(`a measure is a number from 0: ${value}`);
  return Object.entries(units).map(([unit, one]) => ({ unit, amount: value / one }));
}

/**
 * A length in metres, feet, inches, yards and rods.
 *
 * @param tenthMm  tenths of a millimetre, 0 to 10¹⁵
 * @returns        one amount a unit, unrounded, each ≥ 0
 * @throws RangeError otherwise
 * @source         inch 25.4 mm, yard 0.9144 m: Weights and Measures Act 1985, Schedule 1; rod of 5½ yards
 * @example        lengthInEveryUnit(50_292) → 1 rod, 5.03 m, 16.5 ft
 */
export function lengthInEveryUnit(tenthMm: number): Amount[] {
  return inEvery(lengths, tenthMm);
}

/**
 * An area in square metres, feet, yards and rods, in hectares and acres.
 *
 * @param areaCm2  0 to 10¹⁵ [cm²]
 * @returns        one amount a unit, unrounded, each ≥ 0
 * @throws RangeError otherwise
 * @source         as `lengthInEveryUnit`; an acre is 160 square rods
 * @example        areaInEveryUnit(2_529_285) → 10 sq rods, 252.9 m², 302.5 sq yd
 */
export function areaInEveryUnit(areaCm2: number): Amount[] {
  return inEvery(areas, areaCm2);
}

/**
 * A weight in grams, kilograms and tonnes, in ounces, pounds, hundredweight and tons.
 *
 * @param massG  0 to 10¹⁵ [g]
 * @returns      one amount a unit, unrounded, each ≥ 0
 * @throws RangeError otherwise
 * @source       pound: Weights and Measures Act 1985, Schedule 1; the hundredweight is the long one, of 112 lb
 * @example      massInEveryUnit(50_802) → 1 cwt, 50.8 kg, 112 lb
 */
export function massInEveryUnit(massG: number): Amount[] {
  return inEvery(masses, massG);
}

/**
 * A dressing in every unit that one is given in.
 *
 * @param rateGPerM2  > 0, up to 10¹² [g/m²]
 * @returns           one amount a unit, unrounded, each > 0
 * @throws RangeError otherwise
 * @source            as `rateIn`
 * @example           rateInEveryUnit(5000) → 5 kg/m², 50 t/ha, 9.2 lb/sq yd
 */
export function rateInEveryUnit(rateGPerM2: number): readonly (Amount & { readonly unit: RateUnit })[] {
  return rateUnits.map((unit) => ({ unit, amount: rateIn(rateGPerM2, unit) }));
}
