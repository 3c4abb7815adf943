import { StripHatches, StripKey, YearStrip } from '@/app/_ui/year-strip';
import { type StripMonths, stripView } from '@/app/_ui/year-strip-view';
import { wayWords } from '@/app/_ui/date-words';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import type { CropWay, Frosts } from '@/lib/domain/dates/windows-of';

export type StripLine = {
  readonly key: string;
  readonly title: string;
  readonly where?: string;
  readonly ways: readonly CropWay[];
};

type Props = {
  readonly lines: readonly StripLine[];
  readonly months: StripMonths;
  readonly frosts: Frosts;
  readonly today: CalendarDate;
};

/** Crops on strips of months, a strip for each way of growing; the table beside them says the same in days. */
export function Strips({ lines, months, frosts, today }: Props) {
  return (
    <>
      <StripHatches />
      <StripKey />
      <ul className="strips">
        {lines.flatMap(({ key, title, where, ways }) =>
          ways.map(({ way, windows }) => (
            <li key={`${key} ${way}`}>
              <p>
                <strong>{[title, wayWords(way)].filter(Boolean).join(', ')}</strong>{' '}
                {where ? <span className="small soft">{where}</span> : null}
              </p>
              <YearStrip view={stripView(months, windows, frosts, today)} />
            </li>
          )),
        )}
      </ul>
    </>
  );
}
