'use client';

import { type Choice, Options } from '@/app/_ui/field';
import { useFieldState } from '@/app/_ui/form';

/** One cell of the grid: a crop for a whole bed and season. */
export function GridCell({
  name,
  label,
  value,
  choices,
}: {
  name: string;
  label: string;
  value: string;
  choices: readonly Choice[];
}) {
  const { typed } = useFieldState(name);
  return (
    <select key={String(typed)} name={name} aria-label={label} defaultValue={typeof typed === 'string' ? typed : value}>
      <Options choices={choices} empty="not recorded" />
    </select>
  );
}
