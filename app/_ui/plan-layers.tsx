import type { Point } from '@/lib/domain/ground/segment';
import type { SitePath } from '@/lib/domain/placing/drawn-paths';
import { stretchPoints } from '@/lib/domain/placing/stretch-points';

export type DrawnPath = SitePath & { readonly id: string };
export type DrawnDropPoint = { readonly id: string; readonly name: string; readonly at: Point };

type LinesProps = { paths: readonly DrawnPath[]; unit: number; wide?: number };

/** Paths as broken lines; where a lorry can drive, edged by two firm ones. */
export function PathLines({ paths, unit, wide = Math.max(240, unit) }: LinesProps) {
  const driven = paths.map(lorryPart).filter((part) => part.length > 1);
  const lines = paths.map(({ points }) => points);
  return (
    <g fill="none" strokeLinejoin="round">
      <path className="path-ground" d={lines.map(lineOf).join('')} strokeWidth={wide} />
      <path className="lorry-edge" d={driven.map(lineOf).join('')} strokeWidth={wide + unit * 0.45} />
      <path className="lorry-ground" d={driven.map(lineOf).join('')} strokeWidth={wide} />
      <path className="path-line" d={lines.map(lineOf).join('')} />
    </g>
  );
}

function lorryPart({ points, lorry }: DrawnPath): readonly Point[] {
  if (lorry === 'none') return [];
  return lorry === 'whole' ? points : stretchPoints(points, lorry);
}

function lineOf(points: readonly Point[]): string {
  return points.map(({ xCm, yCm }, at) => `${at ? 'L' : 'M'}${Math.round(xCm)} ${Math.round(yCm)}`).join('');
}

type DropPointsProps = { dropPoints: readonly DrawnDropPoint[]; unit: number; edge: number; best: Point | null };

/** Drop points as small heaps, with their names. */
export function DropPoints({ dropPoints, unit, edge, best }: DropPointsProps) {
  return dropPoints.map(({ id, name, at }) => {
    // A name that would run out of the drawing stands on the heap's other side; and it keeps clear of the ring.
    const isLeft = at.xCm + name.length * unit * 0.62 > edge;
    const isBest = best?.xCm === at.xCm && best.yCm === at.yCm;
    const clear = unit * (isBest ? 2.4 : 1.2);
    return (
      <g key={id} transform={`translate(${at.xCm} ${at.yCm})`}>
        <path className="heap" d={heapOf(unit)} />
        <text className="place" x={isLeft ? -clear : clear} y={unit * 0.4} textAnchor={isLeft ? 'end' : 'start'}>
          {name}
        </text>
      </g>
    );
  });
}

/** The place that was found: a ring with a cross. */
export function BestPlace({ at, unit }: { at: Point; unit: number }) {
  const arm = unit * 2.1;
  return (
    <g transform={`translate(${at.xCm} ${at.yCm})`} className="best">
      <title>the place from which the loads are wheeled least</title>
      <circle r={unit * 1.5} />
      <path d={`M${-arm} 0H${arm}M0 ${-arm}V${arm}`} />
    </g>
  );
}

function heapOf(unit: number): string {
  return `M${-unit} ${unit * 0.7}Q${-unit * 0.5} ${-unit * 0.9} 0 ${-unit * 0.9}Q${unit * 0.5} ${-unit * 0.9} ${unit} ${unit * 0.7}Z`;
}

/** What the key says of paths and drop points. */
export function PathKey({ withBest = false }: { withBest?: boolean }) {
  const road: DrawnPath = {
    id: 'k',
    points: [
      { xCm: 0, yCm: 110 },
      { xCm: 380, yCm: 110 },
    ],
    lorry: 'none',
  };
  return (
    <>
      {(['Path', 'Where a lorry can drive'] as const).map((word, at) => (
        <li key={word}>
          <svg className="plan" viewBox="0 0 380 220" aria-hidden="true" style={keyUnit}>
            <PathLines paths={[{ ...road, lorry: at ? 'whole' : 'none' }]} unit={40} wide={110} />
          </svg>
          {word}
        </li>
      ))}
      <li>
        <svg className="plan" viewBox="0 0 38 22" aria-hidden="true">
          <path className="heap" d={heapOf(9)} transform="translate(19 12)" />
        </svg>
        Drop point
      </li>
      {withBest ? (
        <li>
          <svg
            className="plan"
            viewBox="-19 -11 38 22"
            aria-hidden="true"
            style={{ '--unit': 4 } as React.CSSProperties}
          >
            <BestPlace at={{ xCm: 0, yCm: 0 }} unit={4} />
          </svg>
          Least wheeled from here
        </li>
      ) : null}
    </>
  );
}

const keyUnit = { '--unit': 40 } as React.CSSProperties;
