import { dayWords } from '@/app/_ui/delivery-words';
import { stepWords } from '@/app/_ui/sheet-steps';
import { trenchesWords, trenchWord } from '@/app/_ui/sheet-words';
import { TrenchDrawing } from '@/app/_ui/trench-drawing';
import { TrenchKey } from '@/app/_ui/trench-key';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { formatLength } from '@/lib/domain/quantity/length';
import type { Stage } from '@/lib/domain/trench/stages';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';

/** What of the page's height is left for the stages, and of each for its own edges [mm]; a millimetre on the page [px]. */
const stagesMm = 246;
const edgesMm = 2.6;
/** From so many stages on, their words are set smaller. */
const manyStages = 9;
const mmPx = 96 / 25.4;

/** The first page: every stage of the work in words, from the side and from above, all to one scale. */
export function PaperStages({ read }: { read: SheetRead }) {
  const { sheet, plot, bed, units, stages, total } = read;
  const { order, footprint } = sheet;
  const height = Math.min(30, stagesMm / stages.length - edgesMm) * mmPx;
  return (
    <section className="paper-page">
      <header>
        <h1>
          Plot {plot.number}, bed {bed.name}: {diggingMethodOf(order.method).name.toLowerCase()} for{' '}
          {cropGroupName(sheet.group).toLowerCase()}, {sheet.season}
        </h1>
        <p>
          {formatLength(footprint.widthCm, units)} × {formatLength(footprint.lengthCm, units)},{' '}
          {trenchesWords(order, total)},{' '}
          {order.layout === 'two-halves' ? 'along and back in two halves' : 'straight through'}. {dayWords(order.from)}{' '}
          to {dayWords(order.until)}.
        </p>
      </header>
      <ol className={stages.length < manyStages ? 'paper-stages' : 'paper-stages many'}>
        {stages.map((stage, at) => (
          <StageRow
            key={`${stage.code} ${stage.trench}`}
            read={read}
            stage={stage}
            last={at === lastOfFirst(stages)}
            height={height}
          />
        ))}
      </ol>
      <TrenchKey drawings={stages.flatMap(({ section, plan }) => [section, plan])} />
    </section>
  );
}

// After this one it goes on alike.
function lastOfFirst(stages: readonly Stage[]): number {
  return stages.findLastIndex(({ trench }) => trench !== null && trench <= 2);
}

type RowProps = { read: SheetRead; stage: Stage; last: boolean; height: number };

function StageRow({ read, stage, last, height }: RowProps) {
  const { sheet, figures, units, total } = read;
  const { code, trench, section, plan } = stage;
  const word = trenchWord(sheet.order);
  const words = stepWords(code, trench ?? (code === 'mark-out' ? 1 : total), { order: sheet.order, figures, units });
  const drawn = { units, hand: trench };
  return (
    <li>
      <div>
        <h2>
          {trench === null ? '' : `${word === 'trench' ? 'Trench' : 'Strip'} ${trench}: `}
          {trench === null ? words.title : words.title.charAt(0).toLowerCase() + words.title.slice(1)}
        </h2>
        <p>
          {words.how}{' '}
          {last && total > 2 ? (
            <b>
              And so on, {word} by {word}.
            </b>
          ) : null}
        </p>
      </div>
      <TrenchDrawing
        drawing={section}
        label={`From the side: ${words.title}`}
        room={{ width: 310, height, letter: 9.5, grow: 1 }}
        whole
        {...drawn}
      />
      <TrenchDrawing
        drawing={plan}
        label={`From above: ${words.title}`}
        room={{ width: 155, height, letter: 8, grow: 1 }}
        {...drawn}
      />
    </li>
  );
}
