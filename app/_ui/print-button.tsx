'use client';

/** Print this page; without script, the browser's own menu does it. */
export function PrintButton({ children = 'Print' }: { children?: React.ReactNode }) {
  return (
    <button type="button" className="button no-print" onClick={() => window.print()}>
      {children}
    </button>
  );
}
