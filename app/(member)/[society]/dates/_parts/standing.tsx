import Link from 'next/link';
import { spanWords, wayWords } from '@/app/_ui/date-words';
import { Reason } from '@/app/_ui/sheet';
import type { CropWay } from '@/lib/domain/dates/windows-of';
import type { DatesLine } from '@/lib/usecases/dates/read-dates';
import { DayForm } from './day-form';

type Props = { readonly society: string; readonly lines: readonly DatesLine[]; readonly today: string };

/** What stands, till when it may, and the day to record once it is cleared. */
export function Standing({ society, lines, today }: Props) {
  return (
    <ul className="in-window">
      {lines.map(({ key, cropName, season, plantings, ways }) => (
        <li key={key}>
          <p>
            <strong>
              {cropName}, {season}
            </strong>{' '}
            on{' '}
            {plantings.map(({ id, bedId, bedName, plotNumber }, at) => (
              <span key={id}>
                {at ? ', ' : ''}
                <Link href={`/${society}/ground/beds/${bedId}`}>
                  plot {plotNumber}, bed {bedName}
                </Link>
              </span>
            ))}
          </p>
          <p>{clearWords(ways)}</p>
          <Reason ask="Cleared? Say when">
            {plantings.map((planting) => (
              <DayForm key={planting.id} society={society} planting={planting} what={['cleared']} today={today} />
            ))}
          </Reason>
        </li>
      ))}
    </ul>
  );
}

function clearWords(ways: readonly CropWay[]): string {
  const spans = ways.flatMap(({ way, windows }) =>
    windows
      .filter(({ step }) => step === 'clear')
      .map((window) => [spanWords(window), wayWords(way) && `(begun ${wayWords(way)})`].filter(Boolean).join(' ')),
  );
  return spans.length ? `By its windows it is cleared from ${spans.join(', or ')}.` : 'It stands until it is cleared.';
}
