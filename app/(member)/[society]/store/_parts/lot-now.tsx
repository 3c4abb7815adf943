import { dayWords } from '@/app/_ui/delivery-words';
import { Sheet } from '@/app/_ui/sheet';
import {
  amountWords,
  conditionWords,
  daysWords,
  rangeWords,
  roundWords,
  firstReasonWords,
} from '@/app/_ui/store-words';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import type { ReadLot } from '@/lib/usecases/store/read-lot';

/** What there is of a lot now, what became of the rest, and by when it must be used. */
export function LotNowSheet({ read }: { read: ReadLot }) {
  const { now, measure, units, putIn, putInOn, condition, round, useFirst, source, harvest, notes, pieceG } = read;
  const told = (amount: number) => amountWords(amount, measure, units);
  const rows: [string, string][] = [
    ['Put in', `${told(putIn)}, on ${dayWords(putInOn)}; ${conditionWords[condition]}`],
    ['Used', told(now.used)],
    ['Went bad', told(now.bad)],
    ...(now.dried ? [['Dried away', told(now.dried)] satisfies [string, string]] : []),
    ...(pieceG ? [['One weighs', formatMassIn(pieceG, units)] satisfies [string, string]] : []),
    ...(round
      ? [['Gone over', `every ${daysWords(round.everyDays)}; ${roundWords(round)}`] satisfies [string, string]]
      : []),
    ...(useFirst ? [['Use it', byWhenWords(read.today, useFirst.useBy)] satisfies [string, string]] : []),
    ...(harvest ? [['From', `the harvest of ${dayWords(harvest.on)}`] satisfies [string, string]] : []),
    ...(source ? [['From', source] satisfies [string, string]] : []),
  ];
  return (
    <Sheet title="What there is">
      <p className="heap-count">
        {told(now.sound)} <small>{measure === 'pieces' ? 'sound, and left' : 'left, sound'}</small>
      </p>
      {useFirst?.reasons.length ? (
        <div className="notice unknown">
          <p>Use it before others:</p>
          <ul>
            {useFirst.reasons.map((reason) => (
              <li key={reason.code}>{firstReasonWords(reason)}</li>
            ))}
          </ul>
        </div>
      ) : null}
      <dl>
        {rows.map(([what, is]) => [<dt key={`${what} ${is}`}>{what}</dt>, <dd key={`is ${what} ${is}`}>{is}</dd>])}
      </dl>
      {notes ? <p style={{ whiteSpace: 'pre-line' }}>{notes}</p> : null}
    </Sheet>
  );
}

type UseBy = NonNullable<ReadLot['useFirst']>['useBy'];

function byWhenWords(today: ReadLot['today'], { leastDays, medianDays, mostDays }: UseBy): string {
  const [least, median, most] = [leastDays, medianDays, mostDays].map((days) => addDays(today, days));
  return rangeWords({ least: least ?? null, median: median ?? null, most: most ?? null });
}
