import Link from 'next/link';
import type { ReactNode } from 'react';
import { formatMonthDay } from '@/lib/domain/calendar/month-day';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { type RecipeField, type RecipeGroup, recipeFields, recipes as rows } from '@/lib/domain/catalogue/recipes';
import type { SoilKey } from '@/lib/domain/catalogue/soils';
import type { Units } from '@/lib/domain/quantity/length';
import { windowDays } from '@/lib/domain/recipe/digging-window';
import { limeTargetOf } from '@/lib/domain/recipe/lime-target';
import { manurePlaces, type Recipe } from '@/lib/domain/recipe/recipe-of';
import type { SetBy } from '@/lib/domain/recipe/told';
import { valueInWords } from './setting-words';

type Props = {
  readonly recipes: readonly Recipe[];
  readonly units: Units;
  /** The soil at hand; null: heavy or light, whichever a member has. */
  readonly soil: SoilKey | null;
  /** Rows with a value of theirs are marked. */
  readonly whose: Exclude<SetBy, 'catalogue'>;
  readonly hrefOf?: (group: RecipeGroup) => string;
};

const heads = ['dig', 'manure', 'meal and straw', 'lime', 'when', 'in spring'] as const;

/** What each group's ground wants, and when. On a phone each group's row becomes a list: the roles keep it a table. */
export function RecipeTable({ recipes, units, soil, whose, hrefOf }: Props) {
  return (
    <table className="recipe-table" role="table">
      <caption className="sr-only">What each crop group wants of its ground</caption>
      <thead role="rowgroup">
        <tr role="row">
          {['for', ...heads].map((head) => (
            <th key={head} scope="col" role="columnheader">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody role="rowgroup">
        {recipes.map((recipe) => (
          <Row key={recipe.group} cells={cellsOf(recipe, units, soil)} own={ownWords(recipe, whose)}>
            {hrefOf ? (
              <Link href={hrefOf(recipe.group)}>{cropGroupName(recipe.group)}</Link>
            ) : (
              cropGroupName(recipe.group)
            )}
          </Row>
        ))}
      </tbody>
    </table>
  );
}

function Row({ cells, own, children }: { cells: readonly string[]; own: string; children: ReactNode }) {
  return (
    <tr role="row" className={own ? 'mine' : undefined}>
      <th scope="row" role="rowheader">
        {children}
        {own ? <span className="small soft"> {own}</span> : null}
      </th>
      {heads.map((head, at) => (
        <td key={head} role="cell" data-head={head}>
          {cells[at]}
        </td>
      ))}
    </tr>
  );
}

function ownWords(recipe: Recipe, whose: Props['whose']): string {
  const own = recipeFields.filter((field) => recipe[field].setBy === whose);
  return own.length ? `${whose === 'yours' ? 'yours' : 'the society’s'} in ${own.length}` : '';
}

function cellsOf(recipe: Recipe, units: Units, soil: SoilKey | null): string[] {
  const words = (field: RecipeField) =>
    valueInWords(rows[`recipe.${recipe.group}.${field}`], recipe[field].value, units);
  const into = diggingMethodOf(recipe.method.value).opensTrench ? words('mealInto') : 'the top';
  const meal = recipe.meal.value === 'none' ? '' : `${words('meal')} ${words('mealGPerM2')}, in ${into}`;
  const straw = recipe.strawGPerM2.value === 0 ? '' : `straw ${words('strawGPerM2')}, dug in`;
  const lime = limeTargetOf(recipe, soil ?? 'loamy', false);
  return [
    `${words('method')}, left ${words('firmness')}${recipe.leftHigh.value === 'yes' ? ' and high' : ''}`,
    recipe.rateGPerM2.value === 0 ? 'none' : `${words('rateGPerM2')}, ${placeWords(recipe)}`,
    [meal, straw].filter(Boolean).join('\n') || 'none',
    lime ? `to pH ${(lime.phTenths / 10).toFixed(1)}` : 'none',
    soil
      ? windowWords(recipe, soil)
      : `heavy soil: ${windowWords(recipe, 'clayey')}\nlight soil: ${windowWords(recipe, 'sandy')}`,
    recipe.springFinishCm.value === 0 ? 'nothing' : `folded in, ${words('springFinishCm')} deep`,
  ];
}

function placeWords(recipe: Recipe): string {
  const { bottomPercent, topPercent, surfacePercent } = manurePlaces(recipe);
  if (surfacePercent) return 'on the surface';
  if (bottomPercent === 0) return 'in the top spit';
  return topPercent === 0 ? 'in the bottom' : `${bottomPercent} % of it in the bottom`;
}

function windowWords(recipe: Recipe, soil: SoilKey): string {
  const { from, until } = windowDays(recipe, soil);
  return `${formatMonthDay(from)} to ${formatMonthDay(until)}`;
}
