import type { CSSProperties } from 'react';
import { Hatches } from './hatches';
import { PlotBeds } from './plan-beds';
import { boundsOf, type DrawnPlot, drawPlots, outlineOf, type Placed, wordOfEmptyPlot } from './plan-geometry';
import { BestPlace, type DrawnDropPoint, type DrawnPath, DropPoints, PathLines } from './plan-layers';

type Props = {
  readonly name: string;
  /** Left out where it shows the ground and not what stands on it. */
  readonly season?: number;
  readonly plots: readonly DrawnPlot[];
  readonly paths?: readonly DrawnPath[];
  readonly dropPoints?: readonly DrawnDropPoint[];
  readonly northCentideg?: number;
  /** What is wheeled to each plot, in a word, and how dark that makes it: 0 to 1. */
  readonly wheeled?: ReadonlyMap<string, Wheeled>;
  /** Where a heap is wheeled from least. */
  readonly best?: { readonly xCm: number; readonly yCm: number } | null;
  /** Only this plot, enlarged. */
  readonly only?: string;
};

export type Wheeled = { readonly word: string; readonly share: number };

/**
 * The site to scale: plots, paths and drop points, beds and what stands on them in one season. One drawing for the page and for print; it is
 * told apart by colour, hatch and word.
 */
export function SitePlan(props: Props) {
  const { name, season, plots, paths = [], dropPoints = [], northCentideg = 0, wheeled, best = null, only } = props;
  const placed = drawPlots(only ? plots.filter(({ id }) => id === only) : plots);
  const box = boundsOf(placed, only ? [] : [...paths.map(({ points }) => points), dropPoints.map(({ at }) => at)]);
  // Letters and lines grow with the drawing, so that they read the same on a site as on one plot. A site fills the page's
  // width, however long it is; one plot its height.
  const unit = only ? Math.max(box.width, box.height) / 36 : Math.max(box.width / 110, box.height / 260);
  const pad = unit * 2;
  const view = `${box.x - pad} ${box.y - pad} ${box.width + 2 * pad} ${box.height + 2 * pad + unit * 5}`;
  const foot = box.y + box.height + pad;
  return (
    <svg
      className="plan"
      viewBox={view}
      role="group"
      aria-label={`${name}${season ? `, season ${season}` : ''}: plan of ${placed.length} plots to scale`}
      // What every line and letter is measured by: the style sheet says how many of it each is.
      style={{ '--unit': unit, ...(only ? { maxHeight: '34rem' } : {}) } as CSSProperties}
    >
      <Hatches size={unit} />
      {only ? null : <PathLines paths={paths} unit={unit} />}
      {placed.map((plot) => (
        <PlotDrawing key={plot.id} plot={plot} unit={unit} wheeled={wheeled?.get(plot.id)} isBare={!season} />
      ))}
      {only ? null : <DropPoints dropPoints={dropPoints} unit={unit} edge={box.x + box.width + pad} best={best} />}
      {best ? <BestPlace at={best} unit={unit} /> : null}
      <Scale x={box.x} y={foot + unit * 2.2} unit={unit} width={box.width} />
      <g transform={`translate(${box.x + box.width - unit} ${foot + unit * 2}) rotate(${northCentideg / 100})`}>
        <path d={`M0 ${-unit * 1.8}L${unit * 0.7} ${unit}L0 ${unit * 0.5}L${-unit * 0.7} ${unit}Z`} fill="var(--ink)" />
        <text y={unit * 2.3} fontSize={unit * 1.2} textAnchor="middle" fontWeight="700">
          N
        </text>
      </g>
    </svg>
  );
}

type PlotProps = { plot: Placed; unit: number; wheeled: Wheeled | undefined; isBare: boolean };

function PlotDrawing({ plot, unit, wheeled, isBare }: PlotProps) {
  const corners = outlineOf(plot)
    .map(({ xCm, yCm }) => `${xCm},${yCm}`)
    .join(' ');
  const [labelX, labelY] = [plot.label.xCm, plot.label.yCm];
  const wide = plot.number.length * unit * 0.75 + unit * 0.8;
  return (
    <g data-mine={plot.mine || undefined}>
      <polygon className={plot.polygon ? 'plot' : 'plot unmeasured'} points={corners} />
      {wheeled ? (
        <polygon className="wheeled" points={corners} style={{ '--share': wheeled.share } as CSSProperties} />
      ) : null}
      <PlotBeds plot={plot} unit={unit} />
      {wheeled ? (
        <text className="wheeled-word" x={plot.middle.xCm} y={plot.middle.yCm}>
          {wheeled.word}
        </text>
      ) : null}
      {plot.beds.length === 0 && !isBare ? (
        <text className="empty-plot" x={plot.middle.xCm} y={plot.middle.yCm}>
          {wordOfEmptyPlot(plot, unit * 1.1)}
        </text>
      ) : null}
      <rect className="tag" x={labelX} y={labelY} width={wide} height={unit * 1.5} />
      <text className="number" x={labelX + wide / 2} y={labelY + unit * 1.13}>
        {plot.number}
      </text>
    </g>
  );
}

function Scale({ x, y, unit, width }: { x: number; y: number; unit: number; width: number }) {
  const metres = [50, 20, 10, 5, 2, 1].find((length) => length * 100 <= width / 3) ?? 1;
  const length = metres * 100;
  return (
    <g>
      <path
        d={`M${x} ${y - unit / 2}V${y}H${x + length}V${y - unit / 2}M${x + length / 2} ${y}V${y - unit / 3}`}
        fill="none"
        stroke="var(--ink)"
        strokeWidth={unit / 8}
      />
      <text x={x + length + unit * 0.6} y={y + unit * 0.1} fontSize={unit * 1.1}>
        {metres} m
      </text>
    </g>
  );
}
