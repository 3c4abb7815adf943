import 'server-only';
import { habitFields } from '@/lib/domain/catalogue/habits';
import { canEnter } from '@/lib/domain/policy/standing';
import { changeHabitsInput } from '@/lib/schemas/recipes/recipe';
import { mutation } from '../operation';
import { keepHabits } from './keep-habits';

/** Set one's own habits; a field left empty is taken as for anybody. The book notes which changed, never to what. */
export const changeHabits = mutation({
  name: 'change-habits',
  allow: canEnter,
  input: changeHabitsInput,
  write: async (context, typed) => ({
    changed: await keepHabits(
      context,
      habitFields.map((field) => [field, typed[field]]),
    ),
  }),
});
