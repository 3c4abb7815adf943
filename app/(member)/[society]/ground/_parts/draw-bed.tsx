'use client';

import { type PointerEvent, type ReactNode, useRef, useState } from 'react';
import type { Footprint } from '@/lib/domain/ground/footprint';
import type { Polygon } from '@/lib/domain/ground/polygon';
import type { Units } from '@/lib/domain/quantity/length';

type Rect = { x: number; y: number; width: number; length: number };

/** Draw a dimensioned rectangle on the plot; its measures go into the form beside it. Without script, the plan alone. */
export function DrawBed({
  polygon,
  beds,
  units,
  children,
}: {
  polygon: Polygon | null;
  beds: readonly { name: string; footprint: Footprint }[];
  units: Units;
  children: ReactNode;
}) {
  const svg = useRef<SVGSVGElement>(null);
  const [from, setFrom] = useState<{ x: number; y: number } | null>(null);
  const [rect, setRect] = useState<Rect | null>(null);
  const [drawing, setDrawing] = useState(false);
  if (!drawing)
    return (
      <>
        {children}
        <p className="sheet-body">
          <button type="button" className="button" onClick={() => setDrawing(true)}>
            Draw it with a finger or the mouse
          </button>
        </p>
      </>
    );
  const corners = [
    ...(polygon ?? []),
    ...beds.map(({ footprint: f }) => ({ xCm: f.xCm + f.widthCm, yCm: f.yCm + f.lengthCm })),
    { xCm: 0, yCm: 0 },
    ...(polygon ? [] : [{ xCm: 800, yCm: 1200 }]),
  ];
  const [right, bottom] = [Math.max(...corners.map(({ xCm }) => xCm)), Math.max(...corners.map(({ yCm }) => yCm))];
  const at = (event: PointerEvent) => {
    const box = svg.current?.getBoundingClientRect();
    if (!box) return { x: 0, y: 0 };
    const scale = (right + 100) / box.width;
    return {
      x: snap((event.clientX - box.left) * scale - 50, units),
      y: snap((event.clientY - box.top) * scale - 50, units),
    };
  };
  const move = (event: PointerEvent) => {
    if (!from) return;
    const to = at(event);
    setRect({
      x: Math.max(0, Math.min(from.x, to.x)),
      y: Math.max(0, Math.min(from.y, to.y)),
      width: Math.abs(to.x - from.x),
      length: Math.abs(to.y - from.y),
    });
  };
  const letter = Math.max(right, bottom) / 32;
  return (
    <>
      <svg
        ref={svg}
        className="plan"
        style={{ touchAction: 'none', cursor: 'crosshair' }}
        viewBox={`-50 -50 ${right + 100} ${bottom + 100}`}
        role="img"
        aria-label="Drag out a rectangle to place a bed"
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          setFrom(at(event));
        }}
        onPointerMove={move}
        onPointerUp={() => {
          setFrom(null);
          if (rect) intoForm(rect, units);
        }}
      >
        {polygon ? (
          <polygon
            points={polygon.map(({ xCm, yCm }) => `${xCm},${yCm}`).join(' ')}
            fill="var(--paper)"
            stroke="var(--ink)"
            strokeWidth={letter / 6}
          />
        ) : null}
        {beds.map(({ name, footprint }) => (
          <g key={name}>
            <rect
              x={footprint.xCm}
              y={footprint.yCm}
              width={footprint.widthCm}
              height={footprint.lengthCm}
              fill="var(--quiet-wash)"
              stroke="var(--ink)"
              strokeWidth={letter / 8}
            />
            <text x={footprint.xCm + letter / 2} y={footprint.yCm + letter * 1.3} fontSize={letter}>
              {name}
            </text>
          </g>
        ))}
        {rect ? (
          <g>
            <rect
              x={rect.x}
              y={rect.y}
              width={rect.width}
              height={rect.length}
              fill="var(--straw-wash)"
              fillOpacity="0.7"
              stroke="var(--rust)"
              strokeWidth={letter / 5}
            />
            <text x={rect.x + rect.width / 2} y={rect.y - letter / 3} fontSize={letter} textAnchor="middle">
              {shown(rect.width, units)}
            </text>
            <text x={rect.x + rect.width + letter / 3} y={rect.y + rect.length / 2} fontSize={letter}>
              {shown(rect.length, units)}
            </text>
          </g>
        ) : null}
      </svg>
      <p className="sheet-body soft" role="status">
        {rect
          ? `${shown(rect.width, units)} wide, ${shown(rect.length, units)} long, ${shown(rect.x, units)} from the left, ${shown(rect.y, units)} from the top. The form has these; change them there.`
          : 'Drag out a rectangle. Its measures go into the form, where you can change them.'}
      </p>
    </>
  );
}

const inch = 2.54;

// To the nearest 5 cm, or 3 inches.
function snap(cm: number, units: Units): number {
  const step = units === 'metric' ? 5 : 3 * inch;
  return Math.round(cm / step) * step;
}

function shown(cm: number, units: Units): string {
  if (units === 'metric') return `${(cm / 100).toFixed(2)} m`;
  const inches = Math.round(cm / inch);
  return `${Math.floor(inches / 12)} ft ${inches % 12} in`;
}

function intoForm({ x, y, width, length }: Rect, units: Units): void {
  for (const [name, cm] of Object.entries({ x, y, width, length })) {
    const input = document.querySelector(`form input[name="${name}"]`);
    if (input instanceof HTMLInputElement) input.value = shown(cm, units);
  }
}
