import 'server-only';
import { appendOwnSettings, ownSettings } from '@/lib/data/member-setting';
import { type HabitField, type HabitKey, habits } from '@/lib/domain/catalogue/habits';
import type { WriteContext } from '../operation';
import { changesTyped } from './typed-values';

/** Set some of the viewer's habits as they were typed; the book notes which changed, never to what. Returns how many did. */
export async function keepHabits(
  { tx, scope, now, note }: WriteContext,
  typed: readonly (readonly [HabitField, string])[],
): Promise<number> {
  const fields = typed.map(([field, text]) => {
    const key: HabitKey = `habit.${field}`;
    return { field, key, row: habits[field], text };
  });
  const changes = changesTyped(fields, await ownSettings(tx, scope), scope.units);
  await appendOwnSettings(tx, scope, changes, now);
  const changed = changes.map(({ key }) => key);
  if (changed.length) note({ verb: 'changed', thing: 'habits', thingId: scope.memberId, after: { changed } });
  return changed.length;
}
