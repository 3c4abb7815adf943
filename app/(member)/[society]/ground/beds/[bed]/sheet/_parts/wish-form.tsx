import { SelectField, TextField } from '@/app/_ui/field';
import { AskForm } from '@/app/_ui/form';
import { SettingField } from '@/app/_ui/setting-field';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { habits as habitRows } from '@/lib/domain/catalogue/habits';
import { recipeGroups, recipes } from '@/lib/domain/catalogue/recipes';
import type { Setting } from '@/lib/domain/catalogue/setting-row';
import { readTyped } from '@/lib/domain/recipe/typed-value';
import { sheetHabitFields, sheetRecipeFields } from '@/lib/schemas/sheets/sheet';
import type { previewSheet } from '@/lib/usecases/sheets/preview-sheet';
import { sheetMaterials } from '@/lib/usecases/sheets/settle-order';
import type { Asked } from './asked';

type Preview = Awaited<ReturnType<typeof previewSheet.run>>;
type Props = {
  readonly preview: Preview;
  readonly asked: Asked;
  readonly isAsked: boolean;
  readonly errors: Readonly<Record<string, string>>;
};

const shownAtOnce = ['group', 'season', 'partFrom', 'partLength', 'materialKey', 'rateGPerM2'];

/** What may be otherwise on this sheet. Empty fields are as the plan, the recipe and the habits have it. */
export function WishForm({ preview, asked, isAsked, errors }: Props) {
  const { behind } = preview;
  const group = behind?.group ?? null;
  return (
    <AskForm values={isAsked ? asked : null} errors={errors} submit="Work it out">
      <SelectField
        name="group"
        label="For"
        value={asked.group}
        empty={plannedWords(preview)}
        choices={recipeGroups.map((key) => ({ value: key, label: cropGroupName(key).toLowerCase() }))}
      />
      <TextField
        name="season"
        label="Season"
        {...(isAsked ? { hint: `empty: ${behind?.season ?? ''}` } : {})}
        value={asked.season || String(behind?.season ?? '')}
        inputMode="numeric"
        className="short-field"
      />
      {group && behind?.recipe ? (
        <>
          <SelectField
            name="materialKey"
            label="Which manure"
            value={asked.materialKey}
            empty="rotted horse manure, as usual"
            choices={sheetMaterials.map(({ key, name }) => ({ value: key, label: name.toLowerCase() }))}
          />
          <Own preview={preview} asked={asked} name="rateGPerM2" />
          <Strip asked={asked} />
          <Further preview={preview} asked={asked} errors={errors} />
        </>
      ) : null}
    </AskForm>
  );
}

function Strip({ asked }: Pick<Props, 'asked'>) {
  return (
    <fieldset className="row">
      <legend>A strip of the bed alone</legend>
      <TextField
        name="partFrom"
        label="From the top end"
        hint="empty: the whole bed"
        value={asked.partFrom}
        className="short-field"
      />
      <TextField
        name="partLength"
        label="Over a length of"
        hint="empty: to the end"
        value={asked.partLength}
        className="short-field"
      />
    </fieldset>
  );
}

/** All that is seldom otherwise, folded away until some of it is. */
function Further({ preview, asked, errors }: Omit<Props, 'isAsked'>) {
  const isFurther = Object.entries(asked).some(
    ([name, value]) => !shownAtOnce.includes(name) && (value !== '' || errors[name]),
  );
  return (
    <details className="reason" open={isFurther}>
      <summary>Your own way on this sheet</summary>
      <div className="setting-part">
        {sheetRecipeFields
          .filter((name) => name !== 'rateGPerM2')
          .map((name) => (
            <Own key={name} preview={preview} asked={asked} name={name} />
          ))}
        {sheetHabitFields.map((name) => (
          <Own key={name} preview={preview} asked={asked} name={name} />
        ))}
        <SelectField
          name="across"
          label="Trenches run along"
          value={asked.across}
          empty="the shorter side"
          choices={[
            { value: 'width', label: 'the width' },
            { value: 'length', label: 'the length' },
          ]}
        />
        <TextField
          name="ageMonths"
          label="The manure’s age"
          value={asked.ageMonths}
          inputMode="numeric"
          suffix="months"
          className="short-field"
        />
        <TextField
          name="densityGPerL"
          label="A litre of it weighs"
          hint="empty: as the catalogue has it; weigh a bucketful"
          value={asked.densityGPerL}
          inputMode="numeric"
          suffix="g"
          className="short-field"
        />
      </div>
    </details>
  );
}

function plannedWords({ behind }: Preview): string {
  const planned = behind?.planned ?? [];
  return planned.length ? `as planned: ${planned.join(', ').toLowerCase()}` : 'choose what it is for';
}

type OwnName = (typeof sheetRecipeFields)[number] | (typeof sheetHabitFields)[number];

/** A value of the recipe or of the habits, to be otherwise on this sheet alone. */
function Own({ preview, asked, name }: { preview: Preview; asked: Asked; name: OwnName }) {
  const { behind, units } = preview;
  if (!behind?.recipe || !behind.group) return null;
  const isHabit = (sheetHabitFields as readonly string[]).includes(name);
  const row: Setting = isHabit
    ? habitRows[name as (typeof sheetHabitFields)[number]]
    : recipes[`recipe.${behind.group}.${name as (typeof sheetRecipeFields)[number]}`];
  const told = isHabit
    ? behind.habits[name as (typeof sheetHabitFields)[number]]
    : behind.recipe[name as (typeof sheetRecipeFields)[number]];
  const own = asked[name] === '' ? null : readTyped(row, asked[name], units);
  return <SettingField name={name} row={row} units={units} own={own} behind={told} whose="yours" />;
}
