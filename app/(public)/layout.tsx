import Link from 'next/link';
import type { ReactNode } from 'react';

export default function PublicLayout({ children }: { children: ReactNode }) {
  return (
    <>
      <header className="mast">
        <Link href="/" className="name">
          Barrowmoot
        </Link>
        <p className="who">
          <Link href="/help">How it works</Link>
        </p>
      </header>
      <main className="page" id="main">
        {children}
      </main>
    </>
  );
}
