import { Bar } from '@visx/shape';
import { Chart, paper, type Told } from './chart';
import { ChartAxis, scaleOver } from './chart-axis';

const [row, bar] = [40, 16];

/** One bar for each name, its figure behind it. */
export function BarChart({ rows, ...told }: Told & { rows: readonly { name: string; value: number }[] }) {
  const scale = scaleOver(rows.map(({ value }) => value));
  const top = rows.length * row;
  return (
    <Chart
      told={told}
      height={top + paper.axis}
      figures={{
        columns: [{ head: '' }, { head: told.unit, number: true }],
        rows: rows.map(({ name, value }) => ({ key: name, cells: [name, value.toLocaleString('en-GB')] })),
      }}
    >
      <ChartAxis scale={scale} top={top} unit={told.unit} whole={rows.every(({ value }) => Number.isInteger(value))} />
      {rows.map(({ name, value }, at) => (
        <g key={name} transform={`translate(0 ${at * row})`}>
          <text y={15} className="chart-name">
            {name}: {value.toLocaleString('en-GB')}
          </text>
          <Bar
            x={Math.min(scale(0), scale(value))}
            y={20}
            width={Math.abs(scale(value) - scale(0))}
            height={bar}
            fill="var(--slate)"
          />
        </g>
      ))}
    </Chart>
  );
}
