import 'server-only';
import { habits } from '@/lib/domain/catalogue/habits';
import { type Meal, mealOf, meals } from '@/lib/domain/catalogue/meals';
import type { Setting } from '@/lib/domain/catalogue/setting-row';
import type { Units } from '@/lib/domain/quantity/length';
import { type Jar, jarOf } from '@/lib/domain/quantity/meal-jar';
import type { Outcome } from '../refusal';
import { aChoice, aJar, aJarful, anArea, aRate, optional, readFields, type Typed } from './fields';

export type JarAnswer = {
  readonly meal: Meal;
  readonly jarMl: number;
  readonly jar: Jar;
  /** Meal for a piece of ground, where both were given [cm², g/m², g]. */
  readonly dressing: { readonly areaCm2: number; readonly rateGPerM2: number; readonly massG: number } | null;
};

function bounds(row: Setting, atLeast = 0): readonly [number, number] {
  if (row.kind !== 'whole') throw new Error(`no whole number: ${row.name}`);
  return [Math.max(row.least, atLeast), row.most];
}

const fields = {
  meal: aChoice(meals.map(({ key }) => key)),
  jarMl: aJar(bounds(habits.jarMl)),
  jarWeighedG: optional(aJarful(bounds(habits.jarWeighedG, 1))),
  area: optional(anArea),
  rate: optional(aRate),
};

/** What a jarful of meal weighs, and how many jars a piece of ground takes. */
export function askJar(typed: Typed, units: Units): Outcome<JarAnswer> {
  const read = readFields(fields, typed, units);
  if (!read.ok) return read;
  const { jarMl, jarWeighedG: weighedG, area: areaCm2, rate: rateGPerM2 } = read.value;
  const meal = mealOf(read.value.meal);
  if (!meal) throw new Error('the meal was chosen from the catalogue');
  const jar = jarOf({ jarMl, weighedG, density: meal.density });
  const massG = areaCm2 === null || rateGPerM2 === null ? null : (areaCm2 * rateGPerM2) / 10_000;
  const dressing = massG === null ? null : { areaCm2: areaCm2 ?? 0, rateGPerM2: rateGPerM2 ?? 0, massG };
  return { ok: true, value: { meal, jarMl, jar, dressing } };
}
