import { randomUUID } from 'node:crypto';
import { Form } from '@/app/_ui/form';
import { Sheet } from '@/app/_ui/sheet';
import { FirstCaution } from '@/app/_ui/sheet-cautions';
import { type StepWords, stepWords } from '@/app/_ui/sheet-steps';
import { barrowWords, trenchWord } from '@/app/_ui/sheet-words';
import { ThumbButton } from '@/app/_ui/thumb-button';
import { TrenchDrawing } from '@/app/_ui/trench-drawing';
import { TrenchKey } from '@/app/_ui/trench-key';
import { formatLength } from '@/lib/domain/quantity/length';
import { formatShortLength } from '@/lib/domain/quantity/short-length';
import type { Stage } from '@/lib/domain/trench/stages';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';
import { tickTrenchAction } from '../../actions';

const phone = { width: 350, height: 300, letter: 14 };

type Props = { society: string; read: SheetRead; atHand: NonNullable<SheetRead['atHand']> };

/** The trench in hand: how the ground looks now, what is done step by step, what goes in, and the one button. */
export function AtHand({ society, read, atHand }: Props) {
  const { sheet, units, figures } = read;
  const { trench, put, now, steps, barrowBefore } = atHand;
  const word = trenchWord(sheet.order);
  const told = { order: sheet.order, figures, units };
  const first = trench.number === 1 ? [{ stage: now, words: stepWords('mark-out', 1, told) }] : [];
  const all = [...first, ...steps.map((stage) => ({ stage, words: stepWords(stage.code, trench.number, told) }))];
  const hasManure = put.manureBottomMl + put.manureTopMl > 0;
  return (
    <Sheet
      title={`Now: ${word} ${trench.number}`}
      aside={
        <span className="figure">{`${formatLength(trench.lengthCm, units)} × ${formatShortLength(trench.widthCm, units)}`}</span>
      }
    >
      <div className="now-drawings">
        <figure>
          <TrenchDrawing
            drawing={now.plan}
            label={`The bed from above: ${word} ${trench.number} is in hand`}
            units={units}
            room={phone}
            hand={trench.number}
          />
          <figcaption className="small soft">
            From above. You stand at {word} {trench.number}.
          </figcaption>
        </figure>
      </div>
      {hasManure ? <p className="barrow-line">{barrowWords(barrowBefore, put)}</p> : null}
      <ol className="steps">
        {all.map(({ stage, words }, at) => (
          <Step key={`${stage.code} ${at}`} stage={stage} words={words} trench={trench.number} units={units} />
        ))}
      </ol>
      <TrenchKey drawings={all.map(({ stage }) => stage.section)} />
      <FirstCaution order={sheet.order} />
      {sheet.retiredAt ? null : (
        <div className="thumb">
          <Form action={tickTrenchAction.bind(null, society, sheet.id)} writeId={randomUUID()} className="form">
            <input type="hidden" name="trench" value={trench.number} />
            <ThumbButton does={String(trench.number)}>
              {word === 'trench' ? 'Trench' : 'Strip'} {trench.number} done
            </ThumbButton>
          </Form>
        </div>
      )}
    </Sheet>
  );
}

type StepProps = { stage: Stage; words: StepWords; trench: number; units: SheetRead['units'] };

function Step({ stage, words, trench, units }: StepProps) {
  return (
    <li>
      <h3>{words.title}</h3>
      <p>{words.how}</p>
      {stage.code === 'mark-out' ? null : (
        <TrenchDrawing
          drawing={stage.section}
          label={`From the side, when that is done: ${words.title}`}
          units={units}
          room={phone}
          hand={trench}
        />
      )}
    </li>
  );
}
