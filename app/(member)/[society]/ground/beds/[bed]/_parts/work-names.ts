import { diggingMethods } from '@/lib/domain/catalogue/digging-methods';
import { notManure } from '@/lib/domain/catalogue/harvest-intervals';
import { materialOf, materials } from '@/lib/domain/catalogue/materials';
import { mealOf, meals } from '@/lib/domain/catalogue/meals';
import type { WorkKind } from '@/lib/domain/ground/work-kinds';

const unnamed: Readonly<Record<WorkKind, string>> = {
  dug: 'dug',
  manured: 'manure',
  fed: 'a meal',
  limed: 'lime',
  strawed: 'straw',
};

/** What was put on, as it stands in a sentence; of digging, how it was dug. */
export function workName(kind: WorkKind, materialKey: string | null, method: string | null = null): string {
  const digging = diggingMethods.find(({ key }) => key === method)?.name;
  const name = kind === 'dug' ? digging : (materialOf(materialKey ?? '') ?? mealOf(materialKey ?? ''))?.name;
  return (name ?? unnamed[kind]).toLowerCase();
}

const asChoices = (rows: readonly { readonly key: string; readonly name: string }[]) =>
  rows.map(({ key, name }) => ({ value: key, label: name.toLowerCase() }));

export const manureChoices = asChoices(materials.filter(({ key }) => !notManure.includes(key)));
export const mealChoices = asChoices(meals);
export const diggingChoices = asChoices(diggingMethods.filter(({ loosenedSpits }) => loosenedSpits > 0));
