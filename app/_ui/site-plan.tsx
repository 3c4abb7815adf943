import { hatchOf, Hatches } from './hatches';
import {
  boundsOf,
  type DrawnPlot,
  drawPlots,
  labelOf,
  markFits,
  outlineOf,
  type Placed,
  wordOfEmptyPlot,
} from './plan-geometry';

type Props = {
  readonly name: string;
  readonly season: number;
  readonly plots: readonly DrawnPlot[];
  readonly paths?: readonly (readonly { xCm: number; yCm: number }[])[];
  readonly northCentideg?: number;
  /** Only this plot, enlarged. */
  readonly only?: string;
};

/**
 * The site to scale: plots, beds and what stands on them in one season. One drawing for the page and for print; it is
 * told apart by colour, hatch and word.
 */
export function SitePlan({ name, season, plots, paths = [], northCentideg = 0, only }: Props) {
  const placed = drawPlots(only ? plots.filter(({ id }) => id === only) : plots);
  const box = boundsOf(placed, only ? [] : paths);
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
      aria-label={`${name}, season ${season}: plan of ${placed.length} plots to scale`}
      style={only ? { maxHeight: '34rem' } : undefined}
    >
      <Hatches size={unit} />
      {only ? null : paths.map((path) => <Path key={JSON.stringify(path[0])} points={path} unit={unit} />)}
      {placed.map((plot) => (
        <PlotDrawing key={plot.id} plot={plot} unit={unit} />
      ))}
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

function Path({ points, unit }: { points: readonly { xCm: number; yCm: number }[]; unit: number }) {
  const line = points.map(({ xCm, yCm }) => `${xCm},${yCm}`).join(' ');
  return (
    <g fill="none" strokeLinejoin="round">
      <polyline points={line} stroke="var(--rule-fine)" strokeWidth={Math.max(240, unit)} />
      <polyline points={line} stroke="var(--rule)" strokeWidth={unit / 8} strokeDasharray={`${unit} ${unit * 0.7}`} />
    </g>
  );
}

function PlotDrawing({ plot, unit }: { plot: Placed; unit: number }) {
  const outline = outlineOf(plot);
  const [labelX, labelY] = [plot.label.xCm, plot.label.yCm];
  const wide = plot.number.length * unit * 0.75 + unit * 0.8;
  return (
    <g data-mine={plot.mine || undefined}>
      <polygon
        points={outline.map(({ xCm, yCm }) => `${xCm},${yCm}`).join(' ')}
        fill="var(--sheet)"
        stroke={plot.mine ? 'var(--rust)' : 'var(--ink)'}
        strokeWidth={plot.mine ? unit / 4 : unit / 9}
        {...(plot.polygon ? {} : { strokeDasharray: `${unit * 0.7} ${unit * 0.5}` })}
      />
      {plot.beds.map((bed) => (
        <BedDrawing key={bed.id} bed={bed} plot={plot} unit={unit} />
      ))}
      {plot.beds.length === 0 ? (
        <text
          x={plot.middle.xCm}
          y={plot.middle.yCm}
          fontSize={unit * 1.1}
          textAnchor="middle"
          style={{ fill: 'var(--ink-soft)' }}
        >
          {wordOfEmptyPlot(plot, unit * 1.1)}
        </text>
      ) : null}
      <rect x={labelX} y={labelY} width={wide} height={unit * 1.5} fill={plot.mine ? 'var(--rust)' : 'var(--ink)'} />
      <text
        x={labelX + wide / 2}
        y={labelY + unit * 1.13}
        fontSize={unit * 1.1}
        textAnchor="middle"
        fontWeight="700"
        style={{ fill: 'var(--paper)' }}
      >
        {plot.number}
      </text>
    </g>
  );
}

function BedDrawing({ bed, plot, unit }: { bed: Placed['beds'][number]; plot: Placed; unit: number }) {
  const { xCm, yCm, widthCm, lengthCm } = bed.footprint;
  const marked = bed.mark !== null;
  const words =
    bed.plantings
      .map(({ cropName }) => cropName)
      .filter(Boolean)
      .join(', ') || 'nothing recorded';
  const drawing = (
    <g transform={plot.transform}>
      <rect
        x={xCm}
        y={yCm}
        width={widthCm}
        height={lengthCm}
        fill="var(--paper)"
        stroke="var(--ink)"
        strokeWidth={unit / 14}
      />
      {bed.plantings.map((planting) => (
        <PlantingDrawing key={planting.id} planting={planting} unit={unit} upright={-plot.turnDeg} />
      ))}
      {marked ? (
        <rect
          x={xCm}
          y={yCm}
          width={widthCm}
          height={lengthCm}
          fill="none"
          stroke="var(--rust)"
          strokeWidth={unit / 3.5}
          {...(bed.mark === 'turn due' ? { strokeDasharray: `${unit * 0.9} ${unit * 0.3}` } : {})}
        />
      ) : null}
      {bed.mark && markFits(bed, bed.mark, unit) ? (
        <text
          x={xCm + unit * 0.3}
          y={yCm + unit * 0.9}
          fontSize={unit * 0.75}
          fontWeight="700"
          style={{ fill: 'var(--rust)', paintOrder: 'stroke', stroke: 'var(--sheet)', strokeWidth: unit * 0.35 }}
        >
          {bed.mark}
        </text>
      ) : null}
    </g>
  );
  if (!bed.href) return drawing;
  return (
    <a href={bed.href} aria-label={`Plot ${plot.number}, bed ${bed.name}: ${words}${marked ? `, ${bed.mark}` : ''}`}>
      {drawing}
    </a>
  );
}

function PlantingDrawing({
  planting,
  unit,
  upright,
}: {
  planting: Placed['beds'][number]['plantings'][number];
  unit: number;
  upright: number;
}) {
  const { xCm, yCm, widthCm, lengthCm } = planting.footprint;
  const [midX, midY] = [xCm + widthCm / 2, yCm + lengthCm / 2];
  const label = planting.cropName ? labelOf(planting.cropName, planting.footprint, unit * 0.95) : null;
  const turn = label?.down ? 90 : Math.abs(upright) > 90 ? 180 : 0;
  return (
    <>
      <rect
        x={xCm}
        y={yCm}
        width={widthCm}
        height={lengthCm}
        fill={hatchOf(planting.cropGroup)}
        stroke="var(--ink)"
        strokeWidth={unit / 14}
      />
      {label ? (
        <text
          x={midX}
          y={midY}
          dy={label.letterCm * 0.35}
          fontSize={label.letterCm}
          textAnchor="middle"
          transform={turn ? `rotate(${turn} ${midX} ${midY})` : undefined}
          style={{
            paintOrder: 'stroke',
            stroke: 'var(--sheet)',
            strokeWidth: label.letterCm * 0.45,
            strokeLinejoin: 'round',
          }}
        >
          {label.word}
        </text>
      ) : null}
    </>
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
