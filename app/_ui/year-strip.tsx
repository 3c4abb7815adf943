import type { Step } from '@/lib/domain/catalogue/windows';
import { stepWords } from './date-words';
import type { StripView } from './year-strip-view';

const [monthWide, laneHigh, headHigh] = [20, 11, 30];

// Our own hatches on a tile of 8, each told from the others without colour.
const marks: Readonly<Record<Step, React.ReactNode>> = {
  'under-cover': <path d="M0 8L8 0M-2 2L2 -2M6 10L10 6" className="stroke" />,
  seedbed: <circle cx="4" cy="4" r="1.9" className="fill" />,
  'in-place': <rect width="8" height="8" className="fill" />,
  'plant-out': <path d="M2 0V8M6 0V8" className="stroke" />,
  clear: <path d="M0 2H8M0 6H8" className="stroke" />,
};
const steps = Object.keys(marks) as Step[];

/** The patterns of the steps; once on a page that has strips. */
export function StripHatches() {
  return (
    <svg width="0" height="0" aria-hidden="true" className="strip-hatches">
      <defs>
        {steps.map((step) => (
          <pattern key={step} id={`s-${step}`} width="8" height="8" patternUnits="userSpaceOnUse" className={step}>
            <rect width="8" height="8" className="wash" />
            {marks[step]}
          </pattern>
        ))}
      </defs>
    </svg>
  );
}

/** A crop's windows over the months, with the frosts; the table of days says the same in words. */
export function YearStrip({ view }: { view: StripView }) {
  const [wide, high] = [view.months.length * monthWide, headHigh + 3 * laneHigh + 4];
  return (
    <svg className="strip" viewBox={`0 0 ${wide} ${high}`} aria-hidden="true">
      {view.months.map(({ letter, year }, at) => (
        // The months never change places.
        <g key={at}>
          <path d={`M${at * monthWide} ${year ? 0 : headHigh}V${high}`} className={year ? 'year' : 'month'} />
          <text x={(at + 0.5) * monthWide} y={headHigh - 4}>
            {letter}
          </text>
          {year && view.months.length - at >= 2 ? (
            <text x={at * monthWide + 4} y={12} className="of-year">
              {year}
            </text>
          ) : null}
        </g>
      ))}
      <path d={`M0 ${headHigh}H${wide}M0 ${high - 0.5}H${wide}`} className="year" />
      {view.bars.map(({ step, lane, x, width }) => (
        <rect
          key={`${step} ${x}`}
          x={x * monthWide}
          y={headHigh + 2 + lane * laneHigh}
          width={width * monthWide}
          height={laneHigh}
          fill={`url(#s-${step})`}
          className={`window ${step}`}
        />
      ))}
      {view.frosts.map(({ x, which }) => (
        <path key={`${which} ${x}`} d={`M${x * monthWide} ${headHigh}V${high}`} className={`frost ${which}`} />
      ))}
      {view.today === null ? null : (
        <path d={`M${view.today * monthWide} ${headHigh - 14}V${high}`} className="today" />
      )}
    </svg>
  );
}

/** What the strips' hatches and lines mean. */
export function StripKey() {
  return (
    <ul className="key">
      {steps.map((step) => (
        <li key={step}>
          <svg viewBox="0 0 38 22" aria-hidden="true" className="strip">
            <rect width="38" height="22" fill={`url(#s-${step})`} className={`window ${step}`} />
          </svg>
          {stepWords(step)}
        </li>
      ))}
      <li>
        <svg viewBox="0 0 38 22" aria-hidden="true" className="strip">
          <path d="M12 0V22" className="frost lastFrost" />
          <path d="M26 0V22" className="frost firstFrost" />
        </svg>
        last frost, first frost
      </li>
      <li>
        <svg viewBox="0 0 38 22" aria-hidden="true" className="strip">
          <path d="M19 0V22" className="today" />
        </svg>
        today
      </li>
    </ul>
  );
}
