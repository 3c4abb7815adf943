import { stepWords, wayWords } from '@/app/_ui/date-words';
import { sourceWords } from '@/app/_ui/setting-words';
import { Sheet } from '@/app/_ui/sheet';
import { formatMonthDay } from '@/lib/domain/calendar/month-day';
import { referenceFrosts } from '@/lib/domain/catalogue/windows';
import type { DatedWindow } from '@/lib/domain/dates/windows-of';
import type { StripLine } from './strips';

/** Where the windows come from, and what moves them. */
export function WindowSources({ lines }: { lines: readonly StripLine[] }) {
  const published = lines.flatMap(({ title, ways }) =>
    ways.flatMap(({ way, windows }) =>
      windows
        .filter(({ source }) => source !== 'common-practice')
        .map((window: DatedWindow) => ({ title, way, ...window })),
    ),
  );
  return (
    <Sheet title="Where these days come from" wide>
      <p>
        The catalogue tells the months in which English growers have each crop in the ground, for a last frost of{' '}
        {formatMonthDay(referenceFrosts.lastFrost)} and a first of {formatMonthDay(referenceFrosts.firstFrost)}: common
        practice, and days only so that a window has ends. What hangs on the spring moves with the society’s last frost,
        what hangs on the autumn with its first. Garlic, bulb onions and autumn-sown beans keep to the calendar: they go
        by the length of the days.
      </p>
      {published.length ? (
        <ul>
          {published.map(({ title, way, step, source }) => (
            <li key={`${title} ${way} ${step}`}>
              {[title, wayWords(way), stepWords(step)].filter(Boolean).join(', ')}: {sourceWords(source)}
            </li>
          ))}
        </ul>
      ) : null}
    </Sheet>
  );
}
