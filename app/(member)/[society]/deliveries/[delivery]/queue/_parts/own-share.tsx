import { loadsWords, unitWord } from '@/app/_ui/delivery-words';
import type { QueueLine, QueueProps } from './queue-result';
import { owedWords, whyWords } from './queue-words';

/** The way to one's own share, step by step, as with a pencil. */
export function OwnShare({ line, result, unit }: Omit<QueueProps, 'nameOf'> & { line: QueueLine }) {
  const { order, inputs, places } = result;
  const own = result.rounds.flatMap(({ from, served }) => {
    const at = served.indexOf(line.bookingId);
    return at < 0 ? [] : [from + at];
  });
  const inTime = inputs.claims.filter(({ late }) => late === undefined).length;
  const isLate = line.late !== null;
  return (
    <ol>
      <li>
        {isLate
          ? `It came after booking had closed: number ${(line.late ?? 0) + 1} on the waiting list, behind all ${inTime} who were in time.`
          : `In the order (owed most first, then the lot) it stands ${order.indexOf(line.bookingId) + 1} of ${inTime}; it ${owedWords(line.creditBeforeMillionths, unit)}.`}
      </li>
      <li>{placesWords(line, unit)}</li>
      <li>
        The heap of {loadsWords(inputs.loads, unit)} serves the first {places} places of the queue.{' '}
        {own.length
          ? `Of those, ${own.length} ${own.length === 1 ? 'is' : 'are'} its own: ${own.join(', ')}.`
          : 'None of those is its own.'}
      </li>
      <li>
        <b>
          Share: {loadsWords(line.share, unit)} of {line.asked} asked.
        </b>{' '}
        Because: {whyWords(line)}.
      </li>
    </ol>
  );
}

function placesWords({ asked, need, late }: QueueLine, unit: QueueProps['unit']): string {
  if (late !== null) return `It asks for ${loadsWords(asked, unit)}: one place in each round of the waiting list.`;
  const needed = Math.min(asked, need);
  const rest = asked - needed;
  return `It asks for ${loadsWords(asked, unit)} and its due ground needs ${need}: one place, for one ${unitWord(unit)}, in each of ${needed} rounds of needs and ${rest} of wants.`;
}
