import 'server-only';
import type { z } from 'zod';
import { cropsOf } from '@/lib/data/crop';
import { type PlantingRecord, plantingsIn } from '@/lib/data/planting';
import { keptSettingsOn } from '@/lib/data/setting';
import { type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';
import { habits as habitRows } from '@/lib/domain/catalogue/habits';
import { materialOf, materials } from '@/lib/domain/catalogue/materials';
import { type RecipeGroup, recipeGroups, recipes } from '@/lib/domain/catalogue/recipes';
import { areaCm2, type Footprint, overlap } from '@/lib/domain/ground/footprint';
import { habitsOf } from '@/lib/domain/recipe/habits-of';
import { recipeOf } from '@/lib/domain/recipe/recipe-of';
import type { KeptBy } from '@/lib/domain/recipe/told';
import { orderFromRecipe, widthFor } from '@/lib/domain/sheet/order-from-recipe';
import { isTooLarge, type SheetOrder } from '@/lib/domain/sheet/sheet-order';
import { defaultAcross } from '@/lib/domain/trench/trench-plan';
import { sheetHabitFields, sheetRecipeFields, type sheetWishInput } from '@/lib/schemas/sheets/sheet';
import { seasonServed } from '../ground/holding-need';
import type { OpenBed } from '../ground/open-bed';
import { partOf } from '../ground/place-planting';
import type { ReadContext } from '../operation';
import { keptFor } from '../recipes/recipes-for';
import { changesTyped, keptAfter, type TypedField } from '../recipes/typed-values';
import { refuse } from '../refusal';

export type SheetWish = z.output<typeof sheetWishInput>;
type At = Pick<ReadContext, 'db' | 'scope' | 'today'>;

/** What goes under a sheet before anything is typed for it: whose recipes and habits, and what is planned on the ground. */
export type SheetGround = {
  readonly kept: KeptBy;
  readonly season: number;
  readonly footprint: Footprint;
  readonly planned: readonly PlantingRecord[];
  /** Null where neither the plan nor the wish says what the ground is for. */
  readonly group: RecipeGroup | null;
};

/** What a sheet's manure may be: manure and compost that the catalogue has. */
export const sheetMaterials = materials.filter(({ kind }) => kind !== 'bedding');
const usualMaterial = 'horse-manure';

/** The ground of a sheet, its season and what is planned there. */
export async function sheetGround({ db, scope, today }: At, open: OpenBed, wish: SheetWish): Promise<SheetGround> {
  if (open.bed.retiredOn && open.bed.retiredOn <= today) refuse('bed-retired', { numbers: { name: open.bed.name } });
  const season = wish.season ?? seasonServed(today);
  const [least, most] = [yearOf(today), yearOf(today) + 2];
  if (season < least || season > most) refuse('season-out-of-range', { field: 'season', numbers: { least, most } });
  const footprint = partOf(open.bed.footprint, wish, scope.units);
  const seasons = { from: season, to: season };
  const [kept, crops] = await Promise.all([keptOfDigger({ db, scope, today }, open), cropsOf(db, scope)]);
  const planned = (await plantingsIn(db, scope, crops, seasons, [open.bed.frameId])).filter((one) =>
    overlap(one.footprint, footprint),
  );
  return { kept, season, footprint, planned, group: wish.group ?? groupOf(planned, footprint) };
}

/** The order of a sheet: the digger's recipe and habits, and over them what was typed for this sheet alone. */
export function settleOrder(ground: SheetGround, wish: SheetWish, units: At['scope']['units']): SheetOrder {
  const { kept, season, footprint, group } = ground;
  if (!group) return refuse('group-wanted', { field: 'group' });
  const typed = { ...kept, member: keptAfter(kept.member, changesTyped(typedFields(group, wish), {}, units)) };
  const [recipe, habits] = [recipeOf(group, typed), habitsOf(typed)];
  const material = materialWished(wish);
  if (recipe.method.value === 'mulch' && recipe.rateGPerM2.value === 0 && recipe.strawGPerM2.value === 0)
    refuse('nothing-to-lay', { field: wish.strawGPerM2 === '' ? 'rateGPerM2' : 'strawGPerM2' });
  const across = wish.across ?? defaultAcross(footprint);
  const runCm = across === 'width' ? footprint.lengthCm : footprint.widthCm;
  const widthCm = widthFor(recipe, habits, runCm);
  if (Math.min(footprint.widthCm, footprint.lengthCm) < leastSideCm)
    refuse('bed-too-small', { field: 'partLength', numbers: { least: leastSideCm } });
  if (runCm < widthCm)
    refuse('narrower-than-trench', { field: fieldAtFault(wish), numbers: { run: runCm, width: widthCm } });
  if (isTooLarge(footprint, across, widthCm)) refuse('more-than-a-sheet', { field: 'partLength' });
  return orderFromRecipe(recipe, habits, { ground: footprint, season, across, material });
}

/** Less is no bed but a row; as for beds. */
const leastSideCm = 10;

// What was typed is what is wrong; else the width of the trench.
function fieldAtFault({ trenchWidthCm, partLength, across }: SheetWish): string {
  if (trenchWidthCm !== '') return 'trenchWidthCm';
  if (partLength !== '') return 'partLength';
  return across ? 'across' : 'trenchWidthCm';
}

function typedFields(group: RecipeGroup, wish: SheetWish): TypedField<string>[] {
  return [
    ...sheetRecipeFields.map((field) => {
      const key = `recipe.${group}.${field}` as const;
      return { field, key, row: recipes[key], text: wish[field] };
    }),
    ...sheetHabitFields.map((field) => ({ field, key: `habit.${field}`, row: habitRows[field], text: wish[field] })),
  ];
}

function materialWished({ materialKey, ageMonths, densityGPerL }: SheetWish) {
  const material = materialOf(materialKey || usualMaterial);
  if (!material || material.kind === 'bedding') return refuse('no-such-manure', { field: 'materialKey' });
  const [least, most] = [Math.floor(material.leastGPerL / 2), material.mostGPerL * 2];
  const density = densityGPerL ?? material.densityGPerL;
  if (density < least || density > most)
    refuse('density-out-of-range', { field: 'densityGPerL', numbers: { least, most } });
  return { materialKey: material.key, ageMonths, densityGPerL: density };
}

// A holder digs by their own; whoever keeps the ground for others by the first holder's recipes and by nobody's habits.
async function keptOfDigger({ db, scope, today }: At, { holding }: OpenBed): Promise<KeptBy> {
  const holders = holding?.memberIds ?? [];
  const digger = holders.includes(scope.memberId) ? scope.memberId : holders[0];
  return digger ? keptFor(db, scope, digger, today) : { member: {}, society: await keptSettingsOn(db, scope, today) };
}

function groupOf(planned: readonly PlantingRecord[], ground: Footprint): RecipeGroup | null {
  const areas = recipeGroups.map((group) => ({
    group,
    cm2: planned
      .filter(({ cropGroup }) => cropGroup === group)
      .reduce((sum, { footprint }) => sum + sharedCm2(footprint, ground), 0),
  }));
  const most = areas.reduce((best, one) => (one.cm2 > best.cm2 ? one : best));
  return most.cm2 > 0 ? most.group : null;
}

function sharedCm2(a: Footprint, b: Footprint): number {
  const shared = overlap(a, b);
  return shared ? areaCm2(shared) : 0;
}

/** The day from which a sheet's dressing is reckoned while nothing of it is done: today, or the first of its season. */
export function likelyDigDay({ from }: SheetOrder, today: CalendarDate): CalendarDate {
  return today < from ? from : today;
}
