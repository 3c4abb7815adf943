import { dayWords } from '@/app/_ui/delivery-words';
import { litres, trenchWord } from '@/app/_ui/sheet-words';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { formatShortLength } from '@/lib/domain/quantity/short-length';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';

/** So many rows stand in one block; more are set in two. */
const rowsInOne = 14;
/** A block of more rows than this is set closer. */
const denseFrom = 16;

/** Every trench with what goes into it, and a box to tick with a pencil. */
export function PaperTable({ read }: { read: SheetRead }) {
  const { trenches } = read.figures.digging.plan;
  const half = trenches.length > rowsInOne ? Math.ceil(trenches.length / 2) : trenches.length;
  const blocks = [trenches.slice(0, half), trenches.slice(half)].filter(({ length }) => length > 0);
  return (
    <div className={['paper-tables', blocks.length > 1 ? 'two' : '', half > denseFrom ? 'dense' : ''].join(' ')}>
      {blocks.map((block) => (
        <Block key={block[0]?.number} read={read} block={block} />
      ))}
    </div>
  );
}

type Trenches = SheetRead['figures']['digging']['plan']['trenches'];

function Block({ read, block }: { read: SheetRead; block: Trenches }) {
  const { sheet, units, figures, ticks } = read;
  const { order } = sheet;
  const { layers } = figures;
  const hasBottom = layers.total.manureBottomMl > 0;
  const heads = [
    trenchWord(order),
    'size',
    ...(order.manure ? [...(hasBottom ? ['below'] : []), hasBottom ? 'above' : 'manure', 'left in barrow'] : []),
    ...(order.meal ? ['meal'] : []),
    ...(order.strawGPerM2 > 0 ? ['straw'] : []),
    'done',
  ];
  const cellsOf = (number: number) => {
    const put = layers.trenches[number - 1];
    if (!put) return [];
    return [
      ...(order.manure
        ? [
            ...(hasBottom ? [litres(put.manureBottomMl)] : []),
            litres(put.manureTopMl),
            `${litres(put.barrow.leftMl)} of ${put.barrow.number}`,
          ]
        : []),
      ...(order.meal ? [formatMassIn(put.meals[0]?.massG ?? 0, units)] : []),
      ...(order.strawGPerM2 > 0 ? [formatMassIn(put.strawG, units)] : []),
    ];
  };
  return (
    <table>
      <caption className="sr-only">What goes into each {trenchWord(order)}</caption>
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {block.map(({ number, lengthCm, widthCm }) => (
          <tr key={number}>
            <th scope="row">{number}</th>
            <td>{sizeWords(lengthCm, widthCm, units)}</td>
            {cellsOf(number).map((cell, at) => (
              <td key={heads[at + 2]}>{cell}</td>
            ))}
            <td className="tick-box">{dayOf(ticks.find(({ trench }) => trench === number)?.doneOn)}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

// A box that is ticked says when: 25 Nov.
function dayOf(day: string | undefined): string {
  const [, date = '', month = ''] = day ? dayWords(day).split(' ') : [];
  return `${date} ${month.slice(0, 3)}`.trim();
}

// One unit for both sides, so that the column stays narrow: 90 × 60 cm.
function sizeWords(lengthCm: number, widthCm: number, units: Units): string {
  return `${formatShortLength(lengthCm, units).split(' ')[0]} × ${formatShortLength(widthCm, units)}`;
}
