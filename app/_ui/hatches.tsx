import type { CropGroup } from '@/lib/domain/catalogue/crop-groups';
import { cropGroups } from '@/lib/domain/catalogue/crop-groups';

// Our own hatches, drawn on a 20-unit tile: told apart without colour, in print and by any eyes.
const marks: Record<CropGroup, React.ReactNode> = {
  alliums: (
    <>
      <circle cx="5" cy="5" r="2.2" />
      <circle cx="15" cy="15" r="2.2" />
    </>
  ),
  brassicas: <path d="M5 0V20M15 0V20" className="line" />,
  legumes: <path d="M10 4V16M4 10H16" className="line" />,
  roots: <path d="M-2 12L12 -2M8 22L22 8" className="line" />,
  potatoes: <path d="M-2 -2L22 22M-2 8L12 22M8 -2L22 12" className="line" />,
  cucurbits: <circle cx="10" cy="10" r="5.5" className="line" />,
  leaves: <path d="M0 6Q5 1 10 6T20 6M0 16Q5 11 10 16T20 16" className="line" />,
  standing: <path d="M0 0H10V10H0ZM10 10H20V20H10Z" opacity="0.5" />,
};

/** The patterns of the crop groups; `size` sets how coarse they are drawn. */
export function Hatches({ size, prefix = 'h' }: { size: number; prefix?: string }) {
  const scale = size / 22;
  return (
    <defs>
      <style>{'.line{fill:none;stroke:currentColor;stroke-width:2.4}'}</style>
      {cropGroups.map(({ key }) => (
        <pattern
          key={key}
          id={`${prefix}-${key}`}
          width="20"
          height="20"
          patternUnits="userSpaceOnUse"
          patternTransform={`scale(${scale})`}
        >
          <g style={{ color: `var(--group-${key})` }} fill="currentColor">
            <rect width="20" height="20" style={{ opacity: 'var(--hatch-wash)' }} />
            {marks[key]}
          </g>
        </pattern>
      ))}
    </defs>
  );
}

/** The fill of a crop group. */
export function hatchOf(group: CropGroup | null, prefix = 'h'): string {
  return group ? `url(#${prefix}-${group})` : 'var(--quiet-wash)';
}

/** The key: each group's hatch and word, and the two marks; `children` are further entries. */
export function PlanKey({ children }: { children?: React.ReactNode }) {
  return (
    <ul className="key">
      {cropGroups.map(({ key, name }, at) => (
        <li key={key}>
          <svg viewBox="0 0 38 22" aria-hidden="true">
            {at === 0 ? <Hatches size={11} prefix="k" /> : null}
            <rect width="38" height="22" fill={hatchOf(key, 'k')} />
          </svg>
          {name}
        </li>
      ))}
      <li>
        <svg viewBox="0 0 38 22" aria-hidden="true">
          <rect x="2" y="2" width="34" height="18" fill="none" stroke="var(--rust)" strokeWidth="4" />
        </svg>
        Short
      </li>
      <li>
        <svg viewBox="0 0 38 22" aria-hidden="true">
          <rect
            x="2"
            y="2"
            width="34"
            height="18"
            fill="none"
            stroke="var(--rust)"
            strokeWidth="4"
            strokeDasharray="9 3"
          />
        </svg>
        Turn due
      </li>
      {children}
    </ul>
  );
}
