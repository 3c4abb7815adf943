import Link from 'next/link';

/** The way from season to season; seasons to come are marked as planned. */
export function SeasonSwitch({
  seasons,
  season,
  thisYear,
  query = {},
}: {
  seasons: readonly number[];
  season: number;
  thisYear: number;
  query?: Record<string, string>;
}) {
  return (
    <nav className="seasons no-print" aria-label="Season">
      {seasons.map((year) => (
        <Link
          key={year}
          href={`?${new URLSearchParams({ ...query, season: String(year) })}`}
          aria-current={year === season ? 'page' : undefined}
        >
          {year}
          {year > thisYear ? ', planned' : ''}
        </Link>
      ))}
    </nav>
  );
}
