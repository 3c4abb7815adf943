import 'server-only';
import type { HabitField } from '@/lib/domain/catalogue/habits';
import { canEnter } from '@/lib/domain/policy/standing';
import { keepMeasuredInput } from '@/lib/schemas/measures/measure';
import { mutation } from '../operation';
import { keepHabits } from '../recipes/keep-habits';
import { refuse } from '../refusal';

const measured = ['barrowLitres', 'jarMl', 'jarWeighedG'] as const satisfies readonly HabitField[];

/** Keep what was measured of one's own barrow or jar as a habit; what was not measured stays as it was. */
export const keepMeasured = mutation({
  name: 'keep-measured',
  allow: canEnter,
  input: keepMeasuredInput,
  write: async (context, typed) => {
    const given = measured.flatMap((field) => {
      const text = typed[field];
      return text ? [[field, text] as const] : [];
    });
    if (given.length === 0) refuse('nothing-to-keep');
    return { changed: await keepHabits(context, given) };
  },
});
