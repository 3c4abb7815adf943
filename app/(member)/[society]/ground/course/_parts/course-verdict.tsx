import Link from 'next/link';
import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { type Level, levels } from '@/lib/domain/course/cost';
import { formatArea } from '@/lib/domain/quantity/area';
import type { readCourse } from '@/lib/usecases/course/read-course';
import { costWords, levelWords } from './course-words';

type Read = Awaited<ReturnType<typeof readCourse.run>>;

/** Whether anything better could exist, what clashes and what to give up, and what changes by hand cost. */
export function CourseVerdict({ read, again }: { read: Read; again: string }) {
  const { plan, units, beds, options, firstSeason } = read;
  if (!plan) return null;
  const wordOf = (key: string) => (options.find((option) => option.key === key)?.name ?? key).replace(', any', '');
  const bedWords = (id: string) => {
    const bed = beds.find((one) => one.id === id);
    return `${bed?.plotNumber}, bed ${bed?.name}`;
  };
  const shownLevels = levels.filter((level) => plan.cost[level] > 0 || plan.foundCost[level] > 0);
  return (
    <Sheet title="How good it is" wide>
      <p>
        <strong>{headline(plan, units)}</strong> {plan.seconds === null ? '' : `Worked out in ${plan.seconds} s.`}
        {plan.isAged ? ' What is on record has changed since; asking again may find a better one.' : ''}
      </p>
      {plan.conflict?.length ? (
        <>
          <p>
            {plan.conflict.length === 1
              ? 'With every break and rule kept, this wish cannot be met:'
              : 'With every break and rule kept, these wishes cannot all be met. No smaller set of your wishes clashes. Giving up any one of them mends this clash:'}
          </p>
          <ul>
            {plan.conflict.map((wish) =>
              wish.kind === 'wanted' ? (
                <li key={wish.key}>
                  {wordOf(wish.key)} on {formatArea(wish.areaCm2, units)} every season{' '}
                  <Link href={`${again}&without=wanted:${wish.key}`}>ask without it</Link>
                </li>
              ) : (
                <li key={`${wish.bedId} ${wish.year}`}>
                  {wordOf(wish.key)} on plot {bedWords(wish.bedId)} in {firstSeason + wish.year}{' '}
                  <Link href={`${again}&without=must:${wish.bedId}:${firstSeason + wish.year}`}>ask without it</Link>
                </li>
              ),
            )}
          </ul>
        </>
      ) : null}
      {plan.conflict === null && !plan.conflictKnown && plan.seconds !== null ? (
        <p>Which of your wishes clash was not found out within the time.</p>
      ) : null}
      {shownLevels.length ? (
        <Table
          caption="What the plan costs, the weightiest first"
          columns={[
            { head: 'what counts, the weightiest first' },
            { head: plan.isChanged ? 'as you changed it' : 'this plan', number: true },
            ...(plan.isChanged ? [{ head: 'as it was worked out', number: true }] : []),
          ]}
          rows={shownLevels.map((level) => ({
            key: level,
            cells: [
              levelWords(level),
              costWords(level, plan.cost, units),
              ...(plan.isChanged ? [costWords(level, plan.foundCost, units)] : []),
            ],
          }))}
        />
      ) : null}
    </Sheet>
  );
}

function headline(plan: NonNullable<Read['plan']>, units: Read['units']): string {
  if (plan.seconds === null) return 'Moved one bed on, and judged below.';
  if (plan.isChanged) return 'Changed by hand: beside it stands what was worked out.';
  if (plan.gap)
    return `The best that was found in the time; a better one may exist. What is not settled: ${levelWords(plan.gap.level)}${boundWords(plan.gap, units)}.`;
  const perfect = plan.cost.rules === 0 && plan.cost.shortfall === 0;
  return perfect
    ? 'Proven best: every break kept, all that you want given.'
    : 'Proven best: no plan for these wishes does better.';
}

// Rules are weighed by how hard they are, so that their bound is no plain area.
function boundWords({ level, atLeast }: { level: Level; atLeast: number | null }, units: Read['units']): string {
  if (atLeast === null || level === 'rules') return '';
  return `, where no plan can have less than ${formatArea(Math.max(0, atLeast), units)}`;
}
