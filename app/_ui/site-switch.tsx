import Link from 'next/link';

/** The way from site to site, where a society has several. */
export function SiteSwitch({
  sites,
  siteId,
  query = {},
}: {
  sites: readonly { readonly id: string; readonly name: string }[];
  siteId: string;
  query?: Record<string, string>;
}) {
  if (sites.length < 2) return null;
  return (
    <nav className="seasons no-print" aria-label="Site">
      {sites.map(({ id, name }) => (
        <Link
          key={id}
          href={`?${new URLSearchParams({ ...query, site: id })}`}
          aria-current={id === siteId ? 'page' : undefined}
        >
          {name}
        </Link>
      ))}
    </nav>
  );
}
