import 'server-only';
import type { PlotOnDay } from '@/lib/data/plot';
import { type Frame, toSite } from '@/lib/domain/ground/frame';
import { type Polygon, polygonsOverlap } from '@/lib/domain/ground/polygon';

/** Plots are measured by tape: so much of an overlap is taken for a shared boundary [cm]. */
const tapeCm = 30;

/** The number of a plot that a new boundary runs over, or null. */
export function overlapsOnSite(drawn: { frame: Frame; polygon: Polygon }, others: readonly PlotOnDay[]): string | null {
  const here = onSite(drawn.frame, drawn.polygon);
  const over = others.find(
    ({ frame, polygon }) => frame && polygon && polygonsOverlap(here, onSite(frame, polygon), tapeCm),
  );
  return over?.number ?? null;
}

function onSite(frame: Frame, polygon: Polygon): Polygon {
  return polygon
    .map((corner) => toSite(frame, corner))
    .map(({ xCm, yCm }) => ({ xCm: Math.round(xCm), yCm: Math.round(yCm) }));
}
