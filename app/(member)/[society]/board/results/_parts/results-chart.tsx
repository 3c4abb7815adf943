import { IntervalChart } from '@/app/_ui/interval-chart';
import { Empty } from '@/app/_ui/sheet';
import { yieldUnit } from '@/app/_ui/yield-words';
import type { Units } from '@/lib/domain/quantity/length';
import type { Results } from '@/lib/usecases/notes/results-of';
import { groupSays, groupWords, plotsWords, questionWords, yieldFigure, yieldIn } from '../../_parts/results-words';

/** Each plot of each group, the reader’s own filled, with what groups come to. */
export function ResultsChart({ results, units }: { results: Results; units: Units }) {
  const { crop, season, question, compared } = results;
  const { groups, apart } = compared;
  if (groups.length === 0 && apart.values.length === 0)
    return (
      <Empty>
        Of {crop.name.toLocaleLowerCase('en-GB')} {season ? `in ${season} ` : ''}nothing is told: fewer than three
        neighbours have a finished harvest on record and let it be compared. Choose another crop or season, or ask
        neighbours to agree.
      </Empty>
    );
  const told = (values: readonly number[]) => values.map((value) => yieldIn(value, units));
  const rows = groups.map((group) => ({
    name: `${groupWords(question, group.key, results)}, ${plotsWords(group.values.length)}`,
    values: told(group.values),
    own: told(group.own),
    mean: group.mean === null ? null : yieldIn(group.mean, units),
    low: group.low === null ? null : yieldIn(group.low, units),
    high: group.high === null ? null : yieldIn(group.high, units),
  }));
  const aside = {
    name: `not known, or not told apart, ${plotsWords(apart.values.length)}`,
    values: told(apart.values),
    own: told(apart.own),
    ...{ mean: null, low: null, high: null },
  };
  const says = groups.map((group) => groupSays(groupWords(question, group.key, results), group, units));
  return (
    <>
      <IntervalChart
        title={`${crop.name}: ${questionWords[question]}`}
        says={[...(says.length ? says : ['No group can be told by itself.']), apartSays(apart.values, units)]
          .filter(Boolean)
          .join(' ')}
        unit={yieldUnit(units)}
        rows={apart.values.length ? [...rows, aside] : rows}
      />
      <p className="small soft">
        Each ring is one plot; beds of a plot that were treated alike are taken together. Full: your own. Below the
        rings the mean, and where it lies in 95 cases of 100. All to two figures, by size.
      </p>
    </>
  );
}

function apartSays(values: readonly number[], units: Units): string {
  if (values.length === 0) return '';
  const [least = 0, most = 0] = [values[0], values.at(-1)];
  const range = `from ${yieldFigure(least, units)} to ${yieldFigure(most, units)}`;
  return `Not known, or not told apart: ${plotsWords(values.length)}, ${range}.`;
}
