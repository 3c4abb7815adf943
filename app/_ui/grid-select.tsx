'use client';

import type { ReactNode } from 'react';
import { useFieldState } from './form';

type Props = {
  readonly name: string;
  readonly label: string;
  readonly value: string;
  /** Its options. */
  readonly children: ReactNode;
};

/** One entry of a grid of beds and seasons: a list to choose from, which keeps what was chosen when the form is refused. */
export function GridSelect({ name, label, value, children }: Props) {
  const { typed } = useFieldState(name);
  const shown = typeof typed === 'string' ? typed : value;
  return (
    // React resets a form after its action, and a select only to what it was first made with: so it is made anew.
    <select key={shown} name={name} aria-label={label} defaultValue={shown}>
      {children}
    </select>
  );
}
