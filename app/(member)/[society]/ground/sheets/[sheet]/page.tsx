import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { Form } from '@/app/_ui/form';
import { PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { CautionSources, SheetCautions } from '@/app/_ui/sheet-cautions';
import { trenchesWords, trenchWord } from '@/app/_ui/sheet-words';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { readSheet, type SheetRead } from '@/lib/usecases/sheets/read-sheet';
import { untickTrenchAction } from '../actions';
import { AtHand } from './_parts/at-hand';
import { Elsewhere } from './_parts/elsewhere';
import { Finished } from './_parts/finished';
import { ForToday } from './_parts/for-today';
import { ProgressLine } from './_parts/progress-line';
import { UsedAndRest } from './_parts/used-and-rest';
import { WhatItIs } from './_parts/what-it-is';

export const metadata: Metadata = { title: 'Ground sheet' };

type Search = { ticked?: string; back?: string };
type Props = { params: Promise<{ society: string; sheet: string }>; searchParams: Promise<Search> };

export default async function SheetPage({ params, searchParams }: Props) {
  const { society, sheet: sheetId } = await params;
  const { ticked, back } = await searchParams;
  const read = await ask(readSheet, society, { sheetId });
  const { sheet, bed, plot, total, atHand } = read;
  const word = trenchWord(sheet.order);
  const at = `/${society}/ground`;
  const title = atHand
    ? `${word === 'trench' ? 'Trench' : 'Strip'} ${atHand.trench.number} of ${total}`
    : `All ${trenchesWords(sheet.order, total)} are done`;
  return (
    <>
      <PageHead
        title={title}
        lead={`Plot ${plot.number}, bed ${bed.name}: ${diggingMethodOf(sheet.order.method).name.toLowerCase()} for ${cropGroupName(sheet.group).toLowerCase()}, ${sheet.season}.`}
      />
      <ProgressLine read={read} />
      <div id="now" className="stack">
        <Notices society={society} read={read} ticked={Number(ticked)} back={Number(back)} />
        {atHand ? <AtHand society={society} read={read} atHand={atHand} /> : <Finished society={society} read={read} />}
      </div>
      <div className="stack">
        <ForToday society={society} read={read} />
        <UsedAndRest read={read} />
        <Sheet title="Take care">
          <SheetCautions order={sheet.order} />
          <Reason ask="Who says so?">
            <CautionSources order={sheet.order} />
          </Reason>
        </Sheet>
        <WhatItIs society={society} read={read} />
        <Elsewhere society={society} read={read} />
        <p className="actions">
          <Link className="button" href={`${at}/sheets/${sheetId}/print`}>
            Print on two pages
          </Link>
          <Link className="button" href={`${at}/beds/${read.bedsNow[0]?.id ?? bed.id}`}>
            The bed
          </Link>
        </p>
      </div>
    </>
  );
}

type NoticeProps = { society: string; read: SheetRead; ticked: number; back: number };

/** What was just done, with its way back; and what has become of the sheet or its bed. */
function Notices({ society, read, ticked, back }: NoticeProps) {
  const { sheet, done, ticks, bed, bedsNow, limedUntil } = read;
  const word = trenchWord(sheet.order);
  const last = ticks.at(-1);
  const isSplit = !bedsNow.some(({ id }) => id === bed.id);
  return (
    <>
      {sheet.retiredAt ? (
        <p className="notice short">
          This sheet was taken back{done ? '; what was dug by it stays on record' : ''}.{' '}
          <Link href={`/${society}/ground/beds/${bedsNow[0]?.id ?? bed.id}`}>To the bed</Link>
        </p>
      ) : null}
      {isSplit && bedsNow.length ? (
        <p className="notice quiet">
          The bed has changed since: its ground is now {bedsNow.length === 1 ? 'bed' : 'beds'}{' '}
          {bedsNow.map(({ name }) => name).join(', ')}. The sheet goes on as it is.
        </p>
      ) : null}
      {limedUntil ? (
        <p className="notice short">
          This ground was limed: no manure on it before {dayWords(limedUntil.earliestOn)}. Lime drives its nitrogen off.
        </p>
      ) : null}
      {back === done && Number.isSafeInteger(back) ? (
        <p className="notice quiet" role="status">
          Taken back. {done === 0 ? `No ${word} is ticked now.` : `Ticked up to ${word} ${done}.`}
        </p>
      ) : null}
      {last && ticked !== done ? <LastTick society={society} sheetId={sheet.id} word={word} last={last} /> : null}
      {last && ticked === done ? (
        <div className="notice kept ticked" role="status">
          <p>
            {word === 'trench' ? 'Trench' : 'Strip'} {last.trench} is ticked.
          </p>
          <Undo society={society} sheetId={sheet.id} word={word} trench={last.trench} />
        </div>
      ) : null}
    </>
  );
}

type LastProps = { society: string; sheetId: string; word: string; last: SheetRead['ticks'][number] };

function LastTick({ society, sheetId, word, last }: LastProps) {
  const by = last.by === 'you' ? ' by you' : last.by ? ` by ${last.by}` : '';
  return (
    <div className="notice quiet ticked">
      <p>
        Last: {word} {last.trench}, ticked{by}, {dayWords(last.doneOn)}.
      </p>
      <Undo society={society} sheetId={sheetId} word={word} trench={last.trench} />
    </div>
  );
}

function Undo({ society, sheetId, word, trench }: { society: string; sheetId: string; word: string; trench: number }) {
  return (
    <Form action={untickTrenchAction.bind(null, society, sheetId)} writeId={randomUUID()} className="inline-form">
      <input type="hidden" name="trench" value={trench} />
      <button type="submit" className="button">
        Undo {word} {trench}
      </button>
    </Form>
  );
}
