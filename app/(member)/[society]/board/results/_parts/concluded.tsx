import { Reason } from '@/app/_ui/sheet';
import { yieldUnit } from '@/app/_ui/yield-words';
import type { Units } from '@/lib/domain/quantity/length';
import type { Results } from '@/lib/usecases/notes/results-of';
import { contrastSays, groupWords, yieldFigure } from '../../_parts/results-words';

/** What can be concluded of each two groups, in words, and what stands apart or was left out. */
export function Concluded({ results, units }: { results: Results; units: Units }) {
  const { compared, question, leftOut } = results;
  const { groups, contrasts, apart } = compared;
  const nameOf = (key: string) => groupWords(question, key, results);
  return (
    <>
      {contrasts.length ? (
        <ul>
          {contrasts.map((contrast) => (
            <li key={`${contrast.first} ${contrast.second}`}>
              {contrastSays(contrast, [nameOf(contrast.first), nameOf(contrast.second)], units)}
            </li>
          ))}
        </ul>
      ) : null}
      {groups.length === 0 ? (
        <p>Nothing: no group can be told by itself without giving away fewer than three neighbours.</p>
      ) : null}
      {groups.length === 1 ? (
        <p>One group alone has enough neighbours to be told: there is nothing beside it.</p>
      ) : null}
      {groups.length > 3 ? (
        <p>
          Of the best and the worst of several, part was luck. Drawn towards the mean of all:{' '}
          {groups
            .flatMap(({ key, estimate }) =>
              estimate === null ? [] : [`${nameOf(key)} ${yieldFigure(estimate, units)} ${yieldUnit(units)}`],
            )
            .join('; ')}
          .
        </p>
      ) : null}
      {apart.values.length ? (
        <p className="soft">
          What is not on record is not known: it stands apart, and counts for nothing above. So do groups of fewer than
          three neighbours, and a group beside them where they could otherwise be found by taking the rest away.
        </p>
      ) : null}
      <p className="soft">
        Left out: beds that still stand{leftOut.standing === null ? '' : `, ${leftOut.standing} of them`}; beds counted
        in pieces whose weight nobody knows{leftOut.counted === null ? '' : `, ${leftOut.counted} of them`}; and
        everything of those who have not agreed. Of fewer than three neighbours it is not said how many.
      </p>
      <Reason ask="How it is reckoned">
        <ul>
          <li>
            Two groups that three neighbours or more had both of on one plot are compared on those plots, as pairs.
          </li>
          <li>Others by Welch’s interval, for groups that need not spread alike.</li>
          <li>All that is said above together holds in 95 cases of 100: with more groups each must show more.</li>
          <li>From the rounded values that you see: with pencil and paper you come to the same.</li>
        </ul>
      </Reason>
    </>
  );
}
