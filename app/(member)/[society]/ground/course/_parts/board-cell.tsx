'use client';

import type { Choice } from '@/app/_ui/field';
import { useFieldState } from '@/app/_ui/form';

type Props = { name: string; label: string; value: string; choices: readonly Choice[] };

/** One entry of a plan: what stands on a bed in a season. */
export function BoardCell({ name, label, value, choices }: Props) {
  const { typed } = useFieldState(name);
  const shown = typeof typed === 'string' ? typed : value;
  return (
    <select key={shown} name={name} aria-label={label} defaultValue={shown}>
      {choices.map(({ value: key, label: word }) => (
        <option key={key} value={key}>
          {word.replace(', any', '')}
        </option>
      ))}
    </select>
  );
}
