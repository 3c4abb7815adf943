import { BarStackHorizontal } from '@visx/shape';
import { scaleBand, scaleOrdinal } from '@visx/scale';
import { useId } from 'react';
import { Chart, paper, type Told } from './chart';
import { ChartAxis, scaleOver } from './chart-axis';
import { ChartHatches, ChartKey, mostParts } from './chart-hatches';

type Row = { readonly name: string; readonly values: Readonly<Record<string, number>> };
type Props = Told & { parts: readonly { key: string; name: string }[]; rows: readonly Row[] };

const [row, bar] = [40, 18];
const figure = new Intl.NumberFormat('en-GB', { maximumFractionDigits: 1 });
// What rounding leaves over would make the scale longer.
const lengthOf = (parts: readonly number[]) => Number(parts.reduce((sum, one) => sum + one, 0).toPrecision(12));

/** One bar for each name, made up of at most six parts that are told apart by hatch and word. */
export function StackChart({ parts, rows, ...told }: Props) {
  const id = useId();
  if (parts.length > mostParts) throw new RangeError(`more than ${mostParts} parts can't be told apart`);
  const keys = parts.map(({ key }) => key);
  const scale = scaleOver(rows.map(({ values }) => lengthOf(keys.map((key) => values[key] ?? 0))));
  const names = scaleBand<string>({ domain: rows.map(({ name }) => name), range: [0, rows.length * row] });
  const fills = scaleOrdinal({ domain: keys, range: keys.map((_, at) => `url(#${id}${at})`) });
  const top = rows.length * row;
  return (
    <Chart
      told={told}
      height={top + paper.axis}
      aside={<ChartKey id={id} names={parts.map(({ name }) => name)} />}
      figures={{
        columns: [{ head: told.unit }, ...parts.map(({ name }) => ({ head: name, number: true }))],
        rows: rows.map(({ name, values }) => ({
          key: name,
          cells: [name, ...keys.map((key) => figure.format(values[key] ?? 0))],
        })),
      }}
    >
      <ChartHatches id={id} />
      <ChartAxis scale={scale} top={top} unit={told.unit} />
      {rows.map(({ name }, at) => (
        <text key={name} y={at * row + 14} className="chart-name">
          {name}
        </text>
      ))}
      <BarStackHorizontal<Row, string>
        data={[...rows]}
        keys={keys}
        y={({ name }) => name}
        value={({ values }, key) => values[key] ?? 0}
        xScale={scale}
        yScale={names}
        color={fills}
      >
        {(stacks) =>
          stacks.flatMap(({ key, bars }) =>
            bars
              .filter(({ width }) => width > 0)
              .map(({ index, x, y, width, color }) => (
                <rect
                  key={`${key} ${index}`}
                  {...{ x, width }}
                  y={y + 19}
                  height={bar}
                  fill={color}
                  stroke="var(--ink)"
                />
              )),
          )
        }
      </BarStackHorizontal>
    </Chart>
  );
}
