import type { ReactNode } from 'react';

/** One thing that a sheet would want: the figure, and what is said of it. */
export function Wanted({ figure, children }: { figure: ReactNode; children: ReactNode }) {
  return (
    <section>
      <h3>{figure}</h3>
      {children}
    </section>
  );
}
