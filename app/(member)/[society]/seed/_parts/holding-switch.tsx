import Link from 'next/link';

type Holding = { readonly id: string; readonly plots: readonly string[] };

type Props = {
  readonly holdings: readonly Holding[];
  readonly at: string | null;
  readonly query?: Readonly<Record<string, string>>;
};

/** The way between one's holdings; nothing where there is but one. */
export function HoldingSwitch({ holdings, at, query = {} }: Props) {
  if (holdings.length < 2) return null;
  return (
    <nav className="seasons no-print" aria-label="Holding">
      {holdings.map(({ id, plots }) => (
        <Link
          key={id}
          href={`?${new URLSearchParams({ ...query, holding: id })}`}
          aria-current={id === at ? 'page' : undefined}
        >
          Plot {plots.join(', ')}
        </Link>
      ))}
    </nav>
  );
}
