import Link from 'next/link';
import type { ReactNode } from 'react';

export type DueItem = {
  readonly key: string;
  readonly when: string;
  readonly late?: boolean;
  readonly what: ReactNode;
  readonly why?: ReactNode;
  readonly action: { readonly href: string; readonly label: string };
};

/** What wants doing, as lines of an account book: when, what and why, and one way to do it. */
export function DueList({ items }: { items: readonly DueItem[] }) {
  return (
    <ol className="due">
      {items.map(({ key, when, late, what, why, action }, at) => (
        <li key={key}>
          <span className={late ? 'when late' : 'when'}>{when}</span>
          <div>
            <p>{what}</p>
            {why ? <div className="why">{why}</div> : null}
          </div>
          <Link className={at === 0 ? 'button first' : 'button'} href={action.href}>
            {action.label}
          </Link>
        </li>
      ))}
    </ol>
  );
}
