import type { PartKind } from '@/lib/domain/trench/drawing';

// Our own hatches for ground, on a 16-unit tile: told apart without colour, in print and by any eyes.
const marks: Record<Exclude<PartKind, 'open'>, React.ReactNode> = {
  undug: (
    <>
      <circle cx="4" cy="4" r="1.1" />
      <circle cx="12" cy="12" r="1.1" />
    </>
  ),
  topsoil: <path className="line" d="M1 6Q4 1 7 6M9 14Q12 9 15 14" />,
  subsoil: <path className="line" d="M0 8H16" />,
  forked: <path className="line" d="M0 5L4 1L8 5L12 1L16 5M0 13L4 9L8 13L12 9L16 13" />,
  'manure-bottom': <path d="M0 0H16V16H0ZM3 3V5H5V3ZM11 11V13H13V11Z" fillRule="evenodd" />,
  'manure-top': <path d="M0 0H16V16H0ZM3 11V13H5V11ZM11 3V5H13V3Z" fillRule="evenodd" />,
  straw: <path className="line" d="M0 3L16 1M0 8L16 10M0 15L16 13" />,
  heap: (
    <>
      <circle cx="4" cy="4" r="2.2" />
      <circle cx="12" cy="12" r="2.2" />
      <circle cx="12" cy="4" r="1" />
      <circle cx="4" cy="12" r="1" />
    </>
  ),
  folded: <path className="line" d="M3 1V7M8 1V7M13 1V7M0.5 9V15M5.5 9V15M10.5 9V15" />,
};

type Hatched = keyof typeof marks;

type Props = { readonly kinds: readonly PartKind[]; readonly size: number; readonly prefix: string };

/** The patterns of some kinds of ground and of what is laid into it; `size` sets how coarse they are drawn. */
export function SoilHatches({ kinds, size, prefix }: Props) {
  return (
    <defs>
      {kinds.filter(isHatched).map((kind) => (
        <pattern
          key={kind}
          id={`${prefix}-${kind}`}
          width="16"
          height="16"
          patternUnits="userSpaceOnUse"
          patternTransform={`scale(${size / 16})`}
        >
          <g className="hatch" style={{ color: `var(--${colourOf[kind]})` }}>
            <rect width="16" height="16" />
            {marks[kind]}
          </g>
        </pattern>
      ))}
    </defs>
  );
}

function isHatched(kind: PartKind): kind is Hatched {
  return kind !== 'open';
}

const colourOf: Record<Hatched, string> = {
  undug: 'earth',
  topsoil: 'earth',
  heap: 'earth',
  folded: 'earth',
  subsoil: 'subsoil',
  forked: 'subsoil',
  'manure-bottom': 'muck',
  'manure-top': 'muck',
  straw: 'straw',
};

/** The fill of a part; what is open has none. */
export function soilFill(kind: PartKind, prefix: string): string {
  return kind === 'open' ? 'var(--sheet)' : `url(#${prefix}-${kind})`;
}

const names: Record<PartKind, string> = {
  undug: 'not dug yet',
  topsoil: 'top spit, turned',
  subsoil: 'bottom spit',
  forked: 'forked over',
  'manure-bottom': 'manure below',
  'manure-top': 'manure above',
  straw: 'straw',
  open: 'open',
  heap: 'soil of 1',
  folded: 'folded in',
};

/** What a part of a drawing is called. */
export function soilName(kind: PartKind): string {
  return names[kind];
}
