import { Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { codeWords, loadedWords, unitOf, wayWords } from './heap-words';
import type { Placed } from './placed';

/** Each plot's loads, the way to it, and both together; from the best place, or from a drop point. */
export function ByPlot({ read, from }: { read: Placed; from: string }) {
  const { lines, units, sees } = read;
  const shown = sees ? lines.filter(({ loads, mine }) => mine || (loads ?? 0) > 0) : lines;
  const odd = [...new Set(shown.flatMap(({ code }) => codeWords(code) ?? []))];
  const unit = unitOf(units);
  const sum = (pick: (line: (typeof shown)[number]) => number | null) =>
    shown.reduce((all, one) => all + (pick(one) ?? 0), 0);
  if (shown.length === 0) return null;
  return (
    <Sheet title={`By plot, from ${from}`} flush>
      {sees ? null : (
        <p className="sheet-body soft">
          How many loads go to other plots is shown once the lot is out; the ways are the same for everybody.
        </p>
      )}
      <Table
        caption={`Loads and ways by plot, from ${from}`}
        columns={[
          { head: 'plot' },
          { head: 'loads', number: true },
          { head: 'one way', number: true },
          { head: `loaded ${unit}`, number: true },
        ]}
        rows={shown.map(({ id, number, mine, loads, wayCm, loadedCm, code }) => ({
          key: id,
          mine,
          cells: [
            `${number}${mine ? ', yours' : ''}${codeWords(code) ? ` ${marks[odd.indexOf(codeWords(code) ?? '')]}` : ''}`,
            loads ?? '–',
            wayWords(wayCm, units),
            loadedCm === null ? '–' : loadedWords(loadedCm, units),
          ],
        }))}
        {...(sees
          ? {
              foot: [
                'all',
                sum(({ loads }) => loads),
                '',
                loadedWords(
                  sum(({ loadedCm }) => loadedCm),
                  units,
                ),
              ],
            }
          : {})}
      />
      {odd.map((words, at) => (
        <p key={words} className="sheet-body small soft">
          {marks[at]} {words}.
        </p>
      ))}
    </Sheet>
  );
}

const marks = ['*', '†'];
