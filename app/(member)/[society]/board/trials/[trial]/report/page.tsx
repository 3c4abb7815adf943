import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { leastHolders } from '@/lib/domain/comparison/shown-cells';
import { readTrialReport } from '@/lib/usecases/trials/read-report';
import { FixedAnalysis } from '../../_parts/fixed-analysis';
import { TrialFacts } from '../../_parts/trial-facts';
import { LeftOut } from './_parts/left-out';
import { PairTable } from './_parts/pair-table';
import { TrialChart } from './_parts/trial-chart';
import { WhatItSays } from './_parts/what-it-says';

export const metadata: Metadata = { title: 'A trial’s report' };

type Props = { params: Promise<{ society: string; trial: string }> };

export default async function TrialReportPage({ params }: Props) {
  const { society, trial: trialId } = await params;
  const read = await ask(readTrialReport, society, { trialId });
  const { trial, state, report, today } = read;
  const told = report?.told;
  return (
    <>
      <PageHead title={`Report: ${trial.question}`} lead={report ? `As of ${dayWords(today)}.` : undefined}>
        <Link className="button no-print" href={`/${society}/board/trials/${trialId}`}>
          The trial
        </Link>
        {report ? <PrintButton>Print it</PrintButton> : null}
      </PageHead>
      {!report && state !== 'running' ? <Empty>There is no report: the trial is not laid out.</Empty> : null}
      {!report && state === 'running' ? (
        <Empty>
          The report is closed until {dayWords(trial.resultsByOn)} is over, or all results are in: nobody looks before.
          What you got yourself stands on the trial’s page.
        </Empty>
      ) : null}
      {report && !told ? (
        <Empty>
          Withheld. {report.holders === 1 ? 'One holder has' : `${report.holders} holders have`} both results, and of
          fewer than {leastHolders} nothing is shown: one could work out what another one got. Nothing is concluded.
        </Empty>
      ) : null}
      {told ? (
        <>
          <Sheet title="What it says">
            <WhatItSays trial={trial} report={report} told={told} units={read.units} />
          </Sheet>
          <Sheet title="The plots, drawn">
            <TrialChart read={read} told={told} />
          </Sheet>
          <Sheet title="The plots, in figures" wide flush>
            <PairTable read={read} told={told} />
          </Sheet>
        </>
      ) : null}
      {report ? (
        <Sheet title="Who is left out">
          <LeftOut report={report} blocks={read.blocks} />
        </Sheet>
      ) : null}
      <Sheet title="What was tried out">
        <TrialFacts trial={trial} />
      </Sheet>
      <Sheet title="How it is reckoned">
        <p>As it was fixed when joining opened.</p>
        <FixedAnalysis />
      </Sheet>
    </>
  );
}
