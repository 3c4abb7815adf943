import Link from 'next/link';
import { Sheet } from '@/app/_ui/sheet';
import { stepWords } from '@/app/_ui/sheet-steps';
import { TrenchDrawing } from '@/app/_ui/trench-drawing';
import { TrenchKey } from '@/app/_ui/trench-key';
import { addMonths } from '@/lib/domain/calendar/calendar-date';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';
import { dayWords } from '@/app/_ui/delivery-words';

const room = { width: 350, height: 240, letter: 14 };

/** When all is done: how the ground is left, what waits for spring, and when lime may follow. */
export function Finished({ society, read }: { society: string; read: SheetRead }) {
  const { stages, sheet, figures, units, total, ticks } = read;
  const ends = stages.filter(({ code }) => code === 'left-high' || code === 'laid' || code === 'spring-finish');
  const last = ticks.at(-1)?.doneOn;
  return (
    <Sheet title="What is left to do">
      <ol className="steps">
        {ends.map(({ code, section }) => {
          const words = stepWords(code, total, { order: sheet.order, figures, units });
          return (
            <li key={code}>
              <h3>{words.title}</h3>
              <p>{words.how}</p>
              <TrenchDrawing
                drawing={section}
                label={`From the side: ${words.title}`}
                units={units}
                room={room}
                hand={null}
              />
            </li>
          );
        })}
      </ol>
      <TrenchKey drawings={ends.map(({ section }) => section)} />
      {last && sheet.order.manure ? (
        <p>
          No lime on it before {dayWords(addMonths(last, sheet.order.limeApartMonths))}: lime drives the nitrogen of the
          manure off.
        </p>
      ) : null}
      <p>
        The ground is logged as it was done
        {sheet.order.manure ? ', and its turn for manure is reset' : ''}.{' '}
        <Link href={`/${society}/ground/beds/${read.bedsNow[0]?.id ?? read.bed.id}`}>To the bed</Link>
      </p>
    </Sheet>
  );
}
