import { AxisBottom } from '@visx/axis';
import { scaleLinear } from '@visx/scale';
import { inner, paper } from './chart';

/** A scale over all of the values and nought, out to round figures. */
export function scaleOver(values: readonly number[]) {
  const [least, most] = [Math.min(0, ...values), Math.max(0, ...values)];
  // Nothing but noughts still wants a width.
  return scaleLinear<number>({ domain: least === most ? [0, 1] : [least, most], range: [0, inner], nice: 5 });
}

export type Scale = ReturnType<typeof scaleOver>;

const figure = new Intl.NumberFormat('en-GB');

/** The scale below a chart, with its unit, and a fine line up from each of its figures; `whole` where there are no halves. */
export function ChartAxis({
  scale,
  top,
  unit,
  whole = false,
}: {
  scale: Scale;
  top: number;
  unit: string;
  whole?: boolean;
}) {
  return (
    <>
      <AxisBottom
        scale={scale}
        top={top}
        tickValues={scale.ticks(5).filter((one) => !whole || Number.isInteger(one))}
        tickFormat={(value) => figure.format(Number(value)).replace('-', '−')}
        stroke="var(--ink)"
        tickLength={-top}
        tickLineProps={{ stroke: 'var(--rule)', strokeWidth: 1 }}
        tickComponent={({ x, formattedValue }) => (
          <text x={x} y={15} textAnchor={x < 6 ? 'start' : 'middle'} className="chart-tick">
            {formattedValue}
          </text>
        )}
      />
      <text x={paper.width - paper.left} y={top + paper.axis - 3} textAnchor="end" className="chart-tick">
        {unit}
      </text>
    </>
  );
}
