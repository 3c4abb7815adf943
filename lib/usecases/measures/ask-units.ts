import 'server-only';
import { gPerM2Of, rateUnits } from '@/lib/domain/quantity/area-rate';
import {
  type Amount,
  areaInEveryUnit,
  lengthInEveryUnit,
  massInEveryUnit,
  rateInEveryUnit,
} from '@/lib/domain/quantity/in-every-unit';
import type { Units } from '@/lib/domain/quantity/length';
import type { Outcome } from '../refusal';
import { aChoice, aLength, aMassOfSomething, anArea, aNumber, readFields, type Typed } from './fields';

export const unitKinds = ['length', 'area', 'weight', 'rate'] as const;
export type UnitKind = (typeof unitKinds)[number];

export type UnitsAnswer = { readonly of: UnitKind; readonly amounts: readonly Amount[] };

/** A length, an area, a weight or a dressing in every unit that one is given in. */
export function askUnits(typed: Typed, units: Units): Outcome<UnitsAnswer> {
  const of = readFields({ of: aChoice(unitKinds) }, typed, units);
  if (!of.ok) return of;
  const amounts = amountsOf(of.value.of, typed, units);
  return amounts.ok ? { ok: true, value: { of: of.value.of, amounts: amounts.value } } : amounts;
}

function amountsOf(of: UnitKind, typed: Typed, units: Units): Outcome<readonly Amount[]> {
  if (of === 'length') {
    const read = readFields({ length: aLength }, typed, units);
    return read.ok ? { ok: true, value: lengthInEveryUnit(read.value.length * 100) } : read;
  }
  if (of === 'area') {
    const read = readFields({ area: anArea }, typed, units);
    return read.ok ? { ok: true, value: areaInEveryUnit(read.value.area) } : read;
  }
  if (of === 'weight') {
    const read = readFields({ weight: aMassOfSomething }, typed, units);
    return read.ok ? { ok: true, value: massInEveryUnit(read.value.weight) } : read;
  }
  const read = readFields({ rate: aNumber, unit: aChoice(rateUnits) }, typed, units);
  return read.ok ? { ok: true, value: rateInEveryUnit(gPerM2Of(read.value.rate, read.value.unit)) } : read;
}
