import { Circle, Line } from '@visx/shape';
import { Chart, paper, type Told } from './chart';
import { ChartAxis, type Scale, scaleOver } from './chart-axis';

type Row = {
  readonly name: string;
  readonly values: readonly number[];
  /** Null where there are too few to have one. */
  readonly mean: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** Those of the values that are the reader's own. */
  readonly own?: readonly number[];
};

const row = 54;
const figure = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 3 });
const said = (value: number | null) => (value === null ? '' : figure.format(value).replace('-', '−'));

/** Each value a ring, the reader's own a full one; below them the mean and how far it may lie off. */
export function IntervalChart({ rows, ...told }: Told & { rows: readonly Row[] }) {
  const scale = scaleOver(
    rows.flatMap(({ values, own, low, high }) => [...values, ...(own ?? []), low ?? 0, high ?? 0]),
  );
  const top = rows.length * row;
  const hasOwn = rows.some(({ own }) => own?.length);
  return (
    <Chart
      told={told}
      height={top + paper.axis}
      figures={{
        columns: [
          { head: told.unit },
          { head: 'values' },
          ...(hasOwn ? [{ head: 'your own' }] : []),
          { head: 'mean', number: true },
          { head: 'from', number: true },
          { head: 'to', number: true },
        ],
        rows: rows.map(({ name, values, own = [], mean, low, high }) => ({
          key: name,
          cells: [
            ...[name, values.map(said).join(', ')],
            ...(hasOwn ? [own.map(said).join(', ')] : []),
            ...[said(mean), said(low), said(high)],
          ],
        })),
      }}
    >
      <ChartAxis scale={scale} top={top} unit={told.unit} />
      {rows.map((one, at) => (
        <g key={one.name} transform={`translate(0 ${at * row})`}>
          <text y={15} className="chart-name">
            {one.name}
          </text>
          <Strip row={one} scale={scale} />
        </g>
      ))}
    </Chart>
  );
}

function Strip({ row: { values, own = [], mean, low, high }, scale }: { row: Row; scale: Scale }) {
  return (
    <>
      {/* Two alike stand on one another: their order is all that tells them apart. */}
      {values.map((value, at) => (
        <Circle key={at} cx={scale(value)} cy={28} r={4.5} className="chart-value" />
      ))}
      {own.map((value, at) => (
        <Circle key={at} cx={scale(value)} cy={28} r={5} className="chart-own" />
      ))}
      {low !== null && high !== null ? (
        <g className="chart-interval">
          <Line from={{ x: scale(low), y: 42 }} to={{ x: scale(high), y: 42 }} />
          {[low, high].map((end) => (
            <Line key={end} from={{ x: scale(end), y: 38 }} to={{ x: scale(end), y: 46 }} />
          ))}
        </g>
      ) : null}
      {mean === null ? null : (
        <Line from={{ x: scale(mean), y: 35 }} to={{ x: scale(mean), y: 49 }} className="chart-mean" />
      )}
    </>
  );
}
