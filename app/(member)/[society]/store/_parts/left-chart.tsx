import { shortDayWords } from '@/app/_ui/delivery-words';
import { type CalendarDate, daysBetween } from '@/lib/domain/calendar/calendar-date';
import type { readKind } from '@/lib/usecases/store/read-kind';
import { chartDays, monthTicks } from './chart-days';

export type Forecast = NonNullable<Awaited<ReturnType<typeof readKind.run>>['forecast']>;

const frame = { left: 66, top: 26, wide: 560, high: 200 };

/** How likely any is left, from today on: the range in which it runs out, and the new crop. The table beside it says the same. */
export function LeftChart({ forecast, today }: { forecast: Forecast; today: CalendarDate }) {
  const { likelyLeft, newCropOn, runsOut, name } = forecast;
  const days = chartDays(today, likelyLeft, newCropOn);
  const x = (on: CalendarDate) => frame.left + (Math.min(days, daysBetween(today, on)) / days) * frame.wide;
  const y = (permille: number) => frame.top + (1 - permille / 1000) * frame.high;
  const shown = likelyLeft.filter(({ on }) => daysBetween(today, on) <= days);
  const line = shown.map(({ on, permille }) => `${x(on).toFixed(1)},${y(permille).toFixed(1)}`).join(' ');
  const bottom = frame.top + frame.high;
  return (
    <svg
      className="left-chart"
      viewBox={`0 0 ${frame.left + frame.wide + 14} ${bottom + 34}`}
      role="img"
      aria-label={`How likely any ${name.toLowerCase()} are left from day to day; the table below says the same`}
    >
      {runsOut?.least ? (
        <rect
          className="span"
          x={x(runsOut.least)}
          y={frame.top}
          width={Math.max(1, x(runsOut.most ?? likelyLeft.at(-1)?.on ?? today) - x(runsOut.least))}
          height={frame.high}
        />
      ) : null}
      {[0, 250, 500, 750, 1000].map((permille) => (
        <g key={permille}>
          <line className="grid" x1={frame.left} x2={frame.left + frame.wide} y1={y(permille)} y2={y(permille)} />
          <text x={frame.left - 6} y={y(permille) + 4} textAnchor="end">
            {permille / 10} %
          </text>
        </g>
      ))}
      {monthTicks(today, days).map((on) => (
        <g key={on}>
          <line className="grid" x1={x(on)} x2={x(on)} y1={frame.top} y2={bottom + 5} />
          <text x={x(on)} y={bottom + 20} textAnchor="middle">
            {shortDayWords(on).split(' ')[1]}
          </text>
        </g>
      ))}
      <polyline className="line" points={line} />
      <path className="edge" d={`M${frame.left} ${frame.top}V${bottom}H${frame.left + frame.wide}`} />
      {newCropOn ? (
        <g>
          <line className="crop" x1={x(newCropOn)} x2={x(newCropOn)} y1={frame.top - 8} y2={bottom} />
          <text
            className="crop-word"
            x={x(newCropOn)}
            y={frame.top - 12}
            textAnchor={x(newCropOn) > 300 ? 'end' : 'start'}
          >
            new crop
          </text>
        </g>
      ) : null}
    </svg>
  );
}
