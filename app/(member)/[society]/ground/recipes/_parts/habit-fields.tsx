import { SettingField } from '@/app/_ui/setting-field';
import { habitParts, habits as rows } from '@/lib/domain/catalogue/habits';
import type { Units } from '@/lib/domain/quantity/length';
import type { Habits } from '@/lib/domain/recipe/habits-of';

/** Every habit, to be set or left empty. */
export function HabitFields({ habits, behind, units }: { habits: Habits; behind: Habits; units: Units }) {
  return habitParts.map(({ name, fields }) => (
    <fieldset key={name} className="setting-part">
      <legend>{name}</legend>
      {fields.map((field) => (
        <SettingField
          key={field}
          name={field}
          row={rows[field]}
          units={units}
          own={habits[field].setBy === 'yours' ? habits[field].value : null}
          behind={behind[field]}
          whose="yours"
          assumed
        />
      ))}
    </fieldset>
  ));
}
