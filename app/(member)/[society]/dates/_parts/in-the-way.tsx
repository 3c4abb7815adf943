import Link from 'next/link';
import type { ReactNode } from 'react';
import { dayAndMonth } from '@/app/_ui/date-words';
import { dayWords } from '@/app/_ui/delivery-words';
import { Reason } from '@/app/_ui/sheet';
import type { readDates } from '@/lib/usecases/dates/read-dates';
import { DayForm } from './day-form';

type ShownConflict = Awaited<ReturnType<typeof readDates.run>>['conflicts'][number];

type Props = { readonly society: string; readonly conflicts: readonly ShownConflict[]; readonly today: string };

/** What stands in the way of the plan, each with its reason and the way to its bed. */
export function InTheWay({ society, conflicts, today }: Props) {
  return (
    <ul className="in-window">
      {byPlanting(conflicts).map(({ planting, of }) => {
        return (
          <li key={planting.id}>
            <p>
              <strong>
                {planting.cropName}, {planting.season}
              </strong>{' '}
              on{' '}
              <Link href={`/${society}/ground/beds/${planting.bedId}`}>
                plot {planting.plotNumber}, bed {planting.bedName}
              </Link>
            </p>
            {of.map((conflict) => (
              <div key={`${conflict.code} ${conflict.before?.id ?? ''}`}>
                <p>{reasonWords(conflict, society)}</p>
                <Cleared society={society} conflict={conflict} today={today} />
              </div>
            ))}
          </li>
        );
      })}
    </ul>
  );
}

function byPlanting(conflicts: readonly ShownConflict[]) {
  const plantings = new Map(conflicts.flatMap(({ planting }) => (planting ? [[planting.id, planting] as const] : [])));
  return [...plantings.values()].map((planting) => ({
    planting,
    of: conflicts.filter(({ plantingId }) => plantingId === planting.id),
  }));
}

// What is planned itself cannot have been cleared yet.
function Cleared({ society, conflict, today }: { society: string; conflict: ShownConflict; today: string }) {
  const { before } = conflict;
  if (!before || before.season > Number(today.slice(0, 4))) return null;
  return (
    <Reason ask="Cleared? Say when">
      <DayForm society={society} planting={before} what={['cleared']} today={today} />
    </Reason>
  );
}

function reasonWords(conflict: ShownConflict, society: string): ReactNode {
  const beforeName = conflict.before ? `${conflict.before.cropName}, ${conflict.before.season},` : 'The crop before it';
  switch (conflict.code) {
    case 'stands-too-long':
      return conflict.isCertain
        ? `${beforeName} is not ready to be cleared before ${dayWords(conflict.clearFrom)}, and this crop has to go in by ${dayWords(conflict.wantedBy)}. Give one of them another bed.`
        : `${beforeName} may stand until ${dayAndMonth(conflict.clearBy)}, ${daysWords(conflict.daysLate)} too long: this crop has to go in by ${dayWords(conflict.wantedBy)}. Clear it by then, or let the two share the ground if you mean them to.`;
    case 'stands-on':
      return `${beforeName} stands there until it is cleared, and this crop has to go in by ${dayWords(conflict.wantedBy)}.`;
    case 'too-late':
      return `Its last day was ${dayWords(conflict.closedOn)}, ${daysWords(conflict.daysAgo)} ago. If it is in, record the day; otherwise plan something else.`;
    case 'season-too-short':
      return `Between your frosts it has ${daysWords(conflict.shortDays)} less than it is given elsewhere, even sown on the first day. Grow it under cover, or choose another crop.`;
    case 'ground-to-finish':
      return (
        <>
          {conflict.trenchesLeft} {conflict.trenchesLeft === 1 ? 'trench is' : 'trenches are'} left on{' '}
          <Link href={`/${society}/ground/sheets/${conflict.sheetId}`}>its ground sheet</Link>;{' '}
          {conflict.isLate
            ? `by the sheet it is ready on ${dayWords(conflict.until)}, and this crop has to go in by ${dayWords(conflict.wantedBy)}.`
            : `finish it before this crop goes in, by ${dayWords(conflict.wantedBy)}.`}
        </>
      );
    case 'lime-and-manure':
      return `Lime and manure lie ${daysWords(conflict.days)} apart on its ground; they want ${daysWords(conflict.daysWanted)}.`;
    case 'harvest-waits':
      return `For the manure on its ground it may not be harvested before ${dayWords(conflict.earliestOn)}, ${daysWords(conflict.daysLate)} after it is cleared. Give it another bed.`;
  }
}

function daysWords(days: number): string {
  return `${days} ${days === 1 ? 'day' : 'days'}`;
}
