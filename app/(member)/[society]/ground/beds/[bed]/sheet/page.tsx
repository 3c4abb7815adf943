import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { besideFields } from '@/app/_server/form-action';
import { wordsFor } from '@/app/_server/words';
import { Form } from '@/app/_ui/form';
import { DiggingCaution } from '@/app/_ui/ground-cautions';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import { areaCm2 } from '@/lib/domain/ground/footprint';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatLength } from '@/lib/domain/quantity/length';
import { previewSheet } from '@/lib/usecases/sheets/preview-sheet';
import { makeSheetAction } from '../../../sheets/actions';
import { askedIn } from './_parts/asked';
import { WhatItWants } from './_parts/what-it-wants';
import { WishForm } from './_parts/wish-form';

export const metadata: Metadata = { title: 'Make a ground sheet' };

type Props = {
  params: Promise<{ society: string; bed: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
};

export default async function MakeSheetPage({ params, searchParams }: Props) {
  const { society, bed: bedId } = await params;
  const search = await searchParams;
  const asked = askedIn(search);
  const isAsked = Object.keys(search).length > 0;
  const preview = await ask(previewSheet, society, { bedId, wish: asked });
  const { bed, plot, units, behind, sheets, answer } = preview;
  const refusals = answer.ok ? [] : answer.refusals;
  // Nothing planned and nothing asked is no mistake: the form comes first, and asks.
  const isBare = !isAsked && refusals.every(({ code }) => code === 'group-wanted');
  const errors = isBare ? {} : besideFields(refusals);
  const elsewhere = refusals.filter(({ field }) => !field).map(wordsFor);
  const ground = answer.ok ? answer.value.footprint : bed.footprint;
  const wishes = (
    <div className="stack">
      <Sheet title={isBare && !answer.ok ? 'What is it for?' : 'Otherwise?'}>
        {isBare && refusals.length ? (
          <p>Nothing is planned on this bed for {behind?.season}. Choose what the ground is to be made ready for.</p>
        ) : null}
        <WishForm preview={preview} asked={asked} isAsked={isAsked} errors={errors} />
      </Sheet>
    </div>
  );
  return (
    <>
      <PageHead
        title="Make a ground sheet"
        lead={`Plot ${plot.number}, bed ${bed.name}: ${formatLength(ground.widthCm, units)} × ${formatLength(ground.lengthCm, units)}, ${formatArea(areaCm2(ground), units)}.`}
      >
        <Link className="button" href={`/${society}/ground/beds/${bedId}`}>
          Back to the bed
        </Link>
      </PageHead>
      {answer.ok ? null : wishes}
      <div id="answer" className="stack">
        {sheets.map(({ id, group, done }) => (
          <p key={id} className="notice quiet">
            There is a sheet for this ground already, for {cropGroupName(group).toLowerCase()}:{' '}
            {done ? `${done} done, so it is the one to follow` : 'nothing of it is done, so a new one takes its place'}.{' '}
            <Link href={`/${society}/ground/sheets/${id}`}>Open it</Link>
          </p>
        ))}
        {behind?.standing.length ? (
          <p className="notice short">
            {behind.standing.join(' and ')} {behind.standing.length === 1 ? 'stands' : 'stand'} here in {behind.season}:
            what is dug two spits deep does not grow on. Take a strip beside it.
          </p>
        ) : null}
        {answer.ok && behind?.group ? (
          <Sheet
            title={`${diggingMethodOf(answer.value.order.method).name} for ${cropGroupName(behind.group).toLowerCase()}, ${answer.value.season}`}
          >
            <WhatItWants society={society} answer={answer.value} units={units} asked={asked} />
            <Form action={makeSheetAction.bind(null, society, bedId)} writeId={randomUUID()} submit="Make the sheet">
              {Object.entries(asked).map(([name, value]) => (
                <input key={name} type="hidden" name={name} value={value} />
              ))}
            </Form>
            <p className="small soft">
              Whoever shares this ground sees the sheet, with your trench, spit, soil, barrow and jar on it. Your pace,
              age and weight stay yours.
            </p>
            <DiggingCaution />
          </Sheet>
        ) : (
          <Empty>
            {elsewhere.length ? elsewhere.join(' ') : 'What the sheet would want stands here once that is known.'}
          </Empty>
        )}
      </div>
      {answer.ok ? wishes : null}
    </>
  );
}
