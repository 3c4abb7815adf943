import { trenchesWords, trenchWord } from '@/app/_ui/sheet-words';
import { portionWords } from '@/app/_ui/pace-words';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';

/** How far the work has come: a segment for each trench, and the same in words; and how far it goes today. */
export function ProgressLine({ read }: { read: SheetRead }) {
  const { done, total, sheet, portion, atHand } = read;
  const { order } = sheet;
  const left = total - done;
  const isMore = atHand !== null && portion !== null && (portion.leftToday > 0 || portion.doneToday === 0);
  return (
    <div className="wide progress-line">
      <div className="segments" aria-hidden="true">
        {Array.from({ length: total }, (_, at) => (
          <span key={at} className={at < done ? 'done' : at === done ? 'now' : undefined} />
        ))}
      </div>
      <p>
        <strong>{done === 0 ? `No ${trenchWord(order)} done yet` : `${trenchesWords(order, done)} done`}</strong>,{' '}
        {left === 0 ? 'none to go' : `${left} to go`}.{isMore ? ` Today: ${portionWords(portion, order)}.` : ''}
      </p>
    </div>
  );
}
