import { type HabitField, habitFields, type HabitValues, habits } from '../catalogue/habits';
import { type KeptBy, type Told, toldOf } from './told';

/** How one member works, each value with who set it: the society has a say in its barrow alone. */
export type Habits = { readonly [Field in HabitField]: Told<HabitValues[Field]> };

/**
 * A member's habits as they are in force: their own over what is taken while they have not said.
 *
 * Method: value by value; whose barrow is not their own wheels the society's.
 *
 * @param kept  what the member and the society set, by key; unknown keys and values out of bounds are passed over
 * @returns     every habit once, each allowed by its own row
 * @source      each value's own
 * @example     nothing set → a trench of 60 cm, the catalogue's; society's barrow of 100 L → barrowLitres 100, the society's
 */
export function habitsOf({ member, society }: KeptBy): Habits {
  const told = habitFields.map((field) => {
    const societys = field === 'barrowLitres' ? society.barrowLitres : undefined;
    return [field, toldOf(habits[field], member[`habit.${field}`], societys)];
  });
  return Object.fromEntries(told) as Habits;
}
