import { windowsWords } from '@/app/_ui/date-words';
import { Table } from '@/app/_ui/table';
import type { Step } from '@/lib/domain/catalogue/windows';
import type { StripLine } from './strips';

/** Every window in days: what the strips draw, to be read aloud. */
export function DaysTable({ caption, lines }: { caption: string; lines: readonly StripLine[] }) {
  const cell = (line: StripLine, steps: readonly Step[]) => {
    const words = windowsWords(line.ways, steps);
    return words.length ? (
      words.map((one) => (
        <div key={one.span + one.how} className="nowrap">
          {one.span}
          {one.how ? <div className="small soft">{one.how}</div> : null}
        </div>
      ))
    ) : (
      <span className="soft">–</span>
    );
  };
  return (
    <Table
      caption={caption}
      columns={[
        { head: 'crop' },
        { head: 'sow under cover' },
        { head: 'sow outdoors' },
        { head: 'plant out' },
        { head: 'clear' },
      ]}
      rows={lines.map((line) => ({
        key: line.key,
        cells: [
          <div key="crop" className="dates-crop">
            {line.title}
            {line.where ? <div className="small soft">{line.where}</div> : null}
          </div>,
          cell(line, ['under-cover']),
          cell(line, ['seedbed', 'in-place']),
          cell(line, ['plant-out']),
          cell(line, ['clear']),
        ],
      }))}
    />
  );
}
