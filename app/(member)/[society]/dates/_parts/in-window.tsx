import Link from 'next/link';
import { reasonOfWindow, spanWords, stepOfWay } from '@/app/_ui/date-words';
import { Reason } from '@/app/_ui/sheet';
import { sourceWords } from '@/app/_ui/setting-words';
import type { DatesLine } from '@/lib/usecases/dates/read-dates';
import { DayForm } from './day-form';

type Props = { readonly society: string; readonly lines: readonly DatesLine[]; readonly today: string };

/** What is in its window, or opens next: when, why then, and the day to record. */
export function InWindow({ society, lines, today }: Props) {
  return (
    <ul className="in-window">
      {lines.map((line) => (
        <li key={line.key}>
          <p>
            <strong>
              {line.cropName}, {line.season}
            </strong>{' '}
            on{' '}
            {line.plantings.map(({ id, bedId, bedName, plotNumber }, at) => (
              <span key={id}>
                {at ? ', ' : ''}
                <Link href={`/${society}/ground/beds/${bedId}`}>
                  plot {plotNumber}, bed {bedName}
                </Link>
              </span>
            ))}
          </p>
          {line.steps.map((step) => (
            <p key={`${step.way} ${step.step}`}>
              {stateWords(step)}: {stepOfWay(line.cropKey, step)}, {spanWords(step)}.
            </p>
          ))}
          <Reason ask="Why then?">
            {line.steps.map((step) => (
              <p key={`${step.way} ${step.step}`} className="small">
                {capital(stepOfWay(line.cropKey, step))}. {reasonOfWindow(step)} Source: {sourceWords(step.source)}.
              </p>
            ))}
          </Reason>
          {isOpen(line) ? (
            <DayForms society={society} line={line} today={today} />
          ) : (
            <Reason ask="Done already? Say when">
              <DayForms society={society} line={line} today={today} />
            </Reason>
          )}
        </li>
      ))}
    </ul>
  );
}

function DayForms({ society, line, today }: { society: string; line: DatesLine; today: string }) {
  return line.plantings.map((planting) => (
    <DayForm key={planting.id} society={society} planting={planting} what={doneOf(line)} today={today} />
  ));
}

function isOpen({ steps }: DatesLine): boolean {
  return steps.some(({ state }) => state.code === 'open');
}

function capital(text: string): string {
  return `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;
}

/** How a step stands today, as the line begins. */
function stateWords({ state }: DatesLine['steps'][number]): string {
  if (state.code === 'open') return state.daysLeft === 0 ? 'Today is the last day' : `${state.daysLeft + 1} days left`;
  if (state.code === 'opens') return `In ${state.inDays} ${state.inDays === 1 ? 'day' : 'days'}`;
  return `Past since ${state.daysAgo} ${state.daysAgo === 1 ? 'day' : 'days'}`;
}

function doneOf({ steps }: DatesLine): ('sown' | 'planted')[] {
  return [...new Set(steps.map(({ step }) => (step === 'plant-out' ? ('planted' as const) : ('sown' as const))))];
}
