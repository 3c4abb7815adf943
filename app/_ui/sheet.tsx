import type { ReactNode } from 'react';

/** A ruled sheet with a heading line. */
export function Sheet({
  title,
  aside,
  children,
  wide,
  flush,
}: {
  title: ReactNode;
  aside?: ReactNode;
  children: ReactNode;
  wide?: boolean;
  flush?: boolean;
}) {
  return (
    <section className={wide ? 'sheet wide' : 'sheet'}>
      <header>
        <h2>{title}</h2>
        {aside}
      </header>
      {flush ? children : <div className="sheet-body">{children}</div>}
    </section>
  );
}

/** The head of a page: what it answers, a lead, and what can be done. */
export function PageHead({ title, lead, children }: { title: ReactNode; lead?: ReactNode; children?: ReactNode }) {
  return (
    <div className="page-head wide">
      <h1>{title}</h1>
      {lead ? <p className="lead">{lead}</p> : null}
      {children ? <div className="actions">{children}</div> : null}
    </div>
  );
}

/** An empty state: what is not there, and what to do next. */
export function Empty({ children }: { children: ReactNode }) {
  return <div className="empty">{children}</div>;
}

/** A figure's reason, one tap away. */
export function Reason({ ask, children }: { ask: string; children: ReactNode }) {
  return (
    <details className="reason">
      <summary>{ask}</summary>
      <div>{children}</div>
    </details>
  );
}

/** The usual caution beside a number. It can't be switched off. */
export function Caution({ children }: { children: ReactNode }) {
  return (
    <p className="caution">
      <strong>Take care.</strong> {children}
    </p>
  );
}
