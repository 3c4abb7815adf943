'use client';

import { type PointerEvent, type ReactNode, useEffect, useRef, useState } from 'react';
import { PlanViewer } from '@/app/_ui/plan-viewer';
import type { Point } from '@/lib/domain/ground/segment';
import { formatDistance } from '@/lib/domain/placing/parse-distance';
import { formatPoints, readPoints } from '@/lib/domain/placing/read-points';
import { pathLengthCm } from '@/lib/domain/placing/stretch-points';
import { formatLength, type Units } from '@/lib/domain/quantity/length';

type What = 'path' | 'place';
const words: Readonly<Record<What, string>> = {
  path: 'Draw the path on the plan',
  place: 'Set the drop point on the plan',
};

/**
 * Draw on the plan itself: each tap goes as a point into the form of the page, and what is typed there is drawn. All of it
 * can be typed too; without script, the plan alone.
 */
export function DrawOnPlan({ what, units, children }: { what: readonly What[]; units: Units; children: ReactNode }) {
  const frame = useRef<HTMLDivElement>(null);
  const [drawing, setDrawing] = useState<What | null>(null);
  const [view, setView] = useState('0 0 1 1');
  const [line, setLine] = useState<readonly Point[]>([]);
  const [place, setPlace] = useState<Point | null>(null);
  useEffect(() => {
    const show = () => {
      const read = readPoints(fieldOf('points')?.value ?? '', units);
      setLine(read.ok ? read.points : []);
    };
    document.addEventListener('input', show);
    return () => document.removeEventListener('input', show);
  }, [units]);
  const begin = (one: What) => {
    setView(frame.current?.querySelector('svg')?.getAttribute('viewBox') ?? view);
    const read = readPoints(fieldOf('points')?.value ?? '', units);
    setLine(read.ok ? read.points : []);
    setDrawing(one);
  };
  const draw = (points: readonly Point[]) => {
    setLine(points);
    write('points', formatPoints(points, units));
  };
  const tap = (event: PointerEvent<SVGSVGElement>) => {
    const at = placeOf(event, units);
    if (!at) return;
    if (drawing === 'path') return draw([...line, at]);
    setPlace(at);
    write('east', formatDistance(at.xCm, units));
    write('south', formatDistance(at.yCm, units));
  };
  return (
    <>
      <PlanViewer>
        <div className="draw-over" ref={frame}>
          {children}
          {drawing ? (
            <svg
              className="plan over"
              viewBox={view}
              role="img"
              aria-label="Tap the plan to set points"
              onPointerUp={tap}
            >
              <Drawn line={drawing === 'path' ? line : []} place={drawing === 'place' ? place : null} view={view} />
            </svg>
          ) : null}
        </div>
      </PlanViewer>
      <div className="sheet-body">
        <p className="row">
          {what.map((one) => (
            <button
              key={one}
              type="button"
              className="button"
              aria-pressed={drawing === one}
              onClick={() => (drawing === one ? setDrawing(null) : begin(one))}
            >
              {words[one]}
            </button>
          ))}
          {drawing === 'path' && line.length ? (
            <>
              <button type="button" className="button" onClick={() => draw(line.slice(0, -1))}>
                Take the last point back
              </button>
              <button type="button" className="button" onClick={() => draw([])}>
                Begin afresh
              </button>
            </>
          ) : null}
        </p>
        {drawing ? (
          <p className="soft" role="status">
            {drawing === 'path' ? saidOfLine(line, units) : saidOfPlace(place, units)}
          </p>
        ) : null}
      </div>
    </>
  );
}

function Drawn({ line, place, view }: { line: readonly Point[]; place: Point | null; view: string }) {
  // As large as the plan's own letters.
  const unit = Number(view.split(' ')[2]) / 110;
  const points = place ? [place] : line;
  return (
    <g style={{ '--unit': unit } as React.CSSProperties}>
      <polyline className="drawn" points={line.map(({ xCm, yCm }) => `${xCm},${yCm}`).join(' ')} />
      {points.map(({ xCm, yCm }, at) => (
        // The same place may be tapped twice: the order is the key.
        <circle key={at} className="drawn-point" cx={xCm} cy={yCm} r={unit * 0.6} />
      ))}
    </g>
  );
}

function saidOfLine(line: readonly Point[], units: Units): string {
  if (line.length === 0) return 'Tap where the path begins, then at each bend, then where it ends.';
  const length = formatLength(pathLengthCm(line), units);
  return `${line.length} ${line.length === 1 ? 'point' : 'points'}, ${length}. The form has them; change them there, and send it.`;
}

function saidOfPlace(place: Point | null, units: Units): string {
  if (!place) return 'Tap where a load can be tipped.';
  const [east, south] = [formatDistance(place.xCm, units), formatDistance(place.yCm, units)];
  const unit = units === 'metric' ? 'm' : 'ft';
  return `${east} ${unit} east, ${south} ${unit} south. The form has these; name the drop point there, and send it.`;
}

// To the nearest 10 cm or 6 inches: a path is about a metre wide.
function placeOf({ currentTarget, clientX, clientY }: PointerEvent<SVGSVGElement>, units: Units): Point | null {
  const matrix = currentTarget.getScreenCTM();
  if (!matrix) return null;
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
  const step = units === 'metric' ? 10 : 15.24;
  const snap = (cm: number) => Math.round(Math.round(cm / step) * step);
  return { xCm: snap(x), yCm: snap(y) };
}

function fieldOf(name: string): HTMLInputElement | HTMLTextAreaElement | null {
  return document.querySelector<HTMLInputElement | HTMLTextAreaElement>(`form [name="${name}"]`);
}

function write(name: string, value: string): void {
  const field = fieldOf(name);
  if (field) field.value = value;
}
