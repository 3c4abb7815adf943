// Told apart without colour: a full one, leaning lines, dots, a grid, an empty one, upright lines.
const marks = [
  { ink: '--moss', mark: <rect width="8" height="8" fill="currentColor" /> },
  { ink: '--rust', mark: <path d="M-2 10L10 -2M-2 2L2 -2M6 10L10 6" className="chart-line" /> },
  { ink: '--straw', mark: <circle cx="4" cy="4" r="1.5" fill="currentColor" /> },
  { ink: '--slate', mark: <path d="M0 4H8M4 0V8" className="chart-line" /> },
  { ink: '--ink', mark: null },
  { ink: '--ink-soft', mark: <path d="M4 0V8" className="chart-line" /> },
] as const;

/** So many parts can be told apart. */
export const mostParts = marks.length;

/** The patterns of a chart's parts, in their order. */
export function ChartHatches({ id }: { id: string }) {
  return (
    <defs>
      {marks.map(({ ink, mark }, at) => (
        <pattern key={ink} id={`${id}${at}`} width="8" height="8" patternUnits="userSpaceOnUse">
          <g style={{ color: `var(${ink})` }}>{mark}</g>
        </pattern>
      ))}
    </defs>
  );
}

/** What each hatch stands for. */
export function ChartKey({ id, names }: { id: string; names: readonly string[] }) {
  return (
    <ul className="chart-key">
      {names.map((name, at) => (
        <li key={name}>
          <svg viewBox="0 0 24 14" width="24" height="14" aria-hidden="true">
            <rect x="0.5" y="0.5" width="23" height="13" fill={`url(#${id}${at})`} stroke="var(--ink)" />
          </svg>
          {name}
        </li>
      ))}
    </ul>
  );
}
