import { randomUUID } from 'node:crypto';
import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { TextField } from '@/app/_ui/field';
import { Form } from '@/app/_ui/form';
import { PageHead, Sheet } from '@/app/_ui/sheet';
import { trialStateWords } from '@/app/_ui/trial-words';
import { readTrial } from '@/lib/usecases/trials/read-trials';
import { FixedAnalysis } from '../_parts/fixed-analysis';
import { TrialFacts } from '../_parts/trial-facts';
import { callOffAction } from '../actions';
import { OwnBlock } from './_parts/own-block';
import { TrialLot } from './_parts/trial-lot';

export const metadata: Metadata = { title: 'A trial' };

type Props = { params: Promise<{ society: string; trial: string }> };

export default async function TrialPage({ params }: Props) {
  const { society, trial: trialId } = await params;
  const read = await ask(readTrial, society, { trialId });
  const { trial, state, mine, canJoin, canCallOff } = read;
  const at = `/${society}/board/trials`;
  return (
    <>
      <PageHead title={trial.question} lead={`${leadOf(read)}`}>
        {state === 'reported' ? (
          <Link className="button first" href={`${at}/${trialId}/report`}>
            The report
          </Link>
        ) : null}
        {canJoin ? (
          <Link className="button first" href={`${at}/${trialId}/join`}>
            Join with two beds
          </Link>
        ) : null}
        <Link className="button" href={at}>
          All trials
        </Link>
      </PageHead>
      {trial.calledOffWhy ? <p className="notice short wide">Called off, because: “{trial.calledOffWhy}”.</p> : null}
      {mine.map((block) => (
        <OwnBlock key={block.id} {...{ society, read, block }} />
      ))}
      <Sheet title="What is tried out">
        <TrialFacts trial={trial} />
      </Sheet>
      <Sheet title="How it is reckoned">
        <p>Fixed when joining opened; nobody can change it, the database refuses.</p>
        <FixedAnalysis />
      </Sheet>
      <Sheet title="The lot" wide>
        <TrialLot read={read} />
      </Sheet>
      {canCallOff ? (
        <Sheet title="Call it off">
          <Form action={callOffAction.bind(null, society, trialId)} writeId={randomUUID()} submit="Call it off" danger>
            <TextField name="why" label="Reason" hint="It stays on this page, and those who joined are told by mail." />
          </Form>
        </Sheet>
      ) : null}
    </>
  );
}

function leadOf({ state, plots, whole, trial }: Awaited<ReturnType<typeof readTrial.run>>): string {
  const joined = plots === 1 ? '1 plot has joined' : `${plots} plots have joined`;
  if (state === 'running') return `Laid out on ${plots} plots; of ${whole} both results are in.`;
  if (state === 'too-few') return `It does not take place: ${joined}, and ${trial.leastPlots} were wanted.`;
  const words = trialStateWords(state);
  return `${words.charAt(0).toUpperCase()}${words.slice(1)}; ${joined}.`;
}
