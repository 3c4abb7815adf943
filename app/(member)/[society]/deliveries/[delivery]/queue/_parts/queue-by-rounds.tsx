import type { QueueProps } from './queue-result';
import { roundWords } from './queue-words';

/** The queue place by place, round by round, to be counted with a pencil. */
export function QueueByRounds({ result, nameOf }: Pick<QueueProps, 'result' | 'nameOf'>) {
  const mine = new Set(result.lines.filter((line) => line.mine).map(({ bookingId }) => bookingId));
  return (
    <ol className="queue-rounds">
      {result.rounds.map((round) => (
        <li key={roundWords(round)}>
          <b>{roundWords(round)}</b>{' '}
          <span className="soft">
            places {round.from} to {round.from + round.served.length - 1}
          </span>
          <div className="queue-places">
            {round.served.map((id) => (
              <span key={id} className={mine.has(id) ? 'own' : undefined}>
                {nameOf(id)}
              </span>
            ))}
          </div>
          {round.missed.length ? (
            <div className="soft">Here the heap ended. Not served: {round.missed.map(nameOf).join(', ')}.</div>
          ) : null}
        </li>
      ))}
    </ol>
  );
}
