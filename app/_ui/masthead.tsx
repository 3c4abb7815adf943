'use client';

import Link from 'next/link';
import { usePathname } from 'next/navigation';

export type NavLink = { readonly href: string; readonly label: string };

/** The society's head line, and the ways to go; on a phone these lie under the thumb. */
export function Masthead({
  society,
  links,
  who,
  home,
}: {
  society: string;
  links: readonly NavLink[];
  who: React.ReactNode;
  home: string;
}) {
  const path = usePathname();
  const isHere = (href: string) => (href === home ? path === home : path.startsWith(href));
  return (
    <header className="mast">
      <Link href={home} className="name">
        {society}
      </Link>
      <nav aria-label="Main">
        {links.map(({ href, label }) => (
          <Link key={href} href={href} aria-current={isHere(href) ? 'page' : undefined}>
            {label}
          </Link>
        ))}
      </nav>
      <div className="who">{who}</div>
    </header>
  );
}
