import Link from 'next/link';
import { dayWords } from '@/app/_ui/delivery-words';
import { inTimeWords, minutesWords, paceNotes, portionWords, sessionWords } from '@/app/_ui/pace-words';
import { Reason, Sheet } from '@/app/_ui/sheet';
import { sourceWords } from '@/app/_ui/setting-words';
import { energyLimits, paceOf, workShares } from '@/lib/domain/catalogue/paces';
import { formatMinutes } from '@/lib/domain/quantity/minutes';
import type { SheetRead } from '@/lib/usecases/sheets/read-sheet';

type Props = { society: string; read: SheetRead };

/** What falls to today by the digger's own pace, its rests, and the days that are left. */
export function ForToday({ society, read }: Props) {
  const { portion, sheet, total, done } = read;
  if (!portion || read.atHand === null) return null;
  const { plan, leftToday, doneToday } = portion;
  const isEnough = leftToday === 0 && doneToday > 0;
  return (
    <Sheet title="For today">
      <p className="today">
        {isEnough
          ? 'That is today’s portion done. Rest: the bed will wait.'
          : capital(portionWords(portion, sheet.order))}
        {!isEnough && doneToday > 0 ? `; ${leftToday} of them left` : ''}
      </p>
      {isEnough ? null : (
        <p>{capital(sessionWords(plan.firstSession, sheet.order))}. Stop sooner if you tire or it hurts.</p>
      )}
      <p>{capital(inTimeWords(portion, dayWords(sheet.order.until)))}</p>
      <Reason ask="Why so much, and no more?">
        <PaceReason read={read} portion={portion} left={total - (done - doneToday)} />
        <p className="small">
          It goes by your own pace, which nobody else sees: <Link href={`/${society}/ground/recipes`}>your habits</Link>
          .
        </p>
      </Reason>
    </Sheet>
  );
}

function PaceReason({
  read,
  portion,
  left,
}: {
  read: SheetRead;
  portion: NonNullable<SheetRead['portion']>;
  left: number;
}) {
  const { sheet, pace } = read;
  const { plan } = portion;
  const row = paceOf(pace.digger.pace);
  const share = workShares[sheet.order.method];
  return (
    <ul className="small">
      <li>
        {minutesWords(portion, sheet.order, left)}: at your pace, {row.name.toLowerCase()},{' '}
        {Math.round((row.doubleMinutesPerM2 * share.percentOfDouble) / 100)} min for a square metre (
        {sourceWords(row.source)}
        {share.percentOfDouble === 100
          ? ''
          : `; ${share.percentOfDouble} % of double digging, ${sourceWords(share.source)}`}
        ).
      </li>
      <li>
        A session of {formatMinutes(plan.firstSession.totalMin)} holds {formatMinutes(plan.firstSession.diggingMin)} of
        digging and {formatMinutes(plan.firstSession.restMin)} of rest
        {plan.basis.code === 'adults-19-59'
          ? `, so that the mean stays at ${plan.basis.limitKcalPerMin} kcal a minute (${sourceWords(energyLimits.usual.source)}): this work costs ${plan.basis.workKcalPerMin.toFixed(1)} (${sourceWords(plan.basis.exertion.source)})`
          : ''}
        .
      </li>
      {paceNotes(plan).map((note) => (
        <li key={note}>{note}</li>
      ))}
    </ul>
  );
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
