import { type RecipeField, recipeParts, recipes } from '@/lib/domain/catalogue/recipes';
import type { Units } from '@/lib/domain/quantity/length';
import type { Recipe } from '@/lib/domain/recipe/recipe-of';
import { SettingField } from './setting-field';

/** Every value of one group's recipe, to be set for oneself or for the society. */
export function RecipeFields({
  behind,
  own,
  units,
  whose,
}: {
  readonly behind: Recipe;
  readonly own: (field: RecipeField) => string | number | null;
  readonly units: Units;
  readonly whose: 'yours' | 'society';
}) {
  return recipeParts.map(({ name, fields }) => (
    <fieldset key={name} className="setting-part">
      <legend>{name}</legend>
      {fields.map((field) => (
        <SettingField
          key={field}
          name={field}
          row={recipes[`recipe.${behind.group}.${field}`]}
          units={units}
          own={own(field)}
          behind={behind[field]}
          whose={whose}
        />
      ))}
    </fieldset>
  ));
}
