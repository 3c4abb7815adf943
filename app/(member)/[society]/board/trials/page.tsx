import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { shortDayWords } from '@/app/_ui/delivery-words';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { Table } from '@/app/_ui/table';
import { trialStateWords } from '@/app/_ui/trial-words';
import { readTrials } from '@/lib/usecases/trials/read-trials';

export const metadata: Metadata = { title: 'Trials' };

export default async function TrialsPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { trials } = await ask(readTrials, society);
  const at = `/${society}/board/trials`;
  return (
    <>
      <PageHead
        title="Trials"
        lead="Two treatments, each on one of two like beds of a plot. A lot says which, and how it is reckoned is fixed before anybody joins."
      >
        <Link className="button first" href={`${at}/new`}>
          Propose a trial
        </Link>
        <Link className="button" href={`/${society}/board`}>
          The board
        </Link>
      </PageHead>
      <Sheet title="What is tried out" wide flush>
        {trials.length === 0 ? (
          <Empty>Nothing is tried out yet. Propose a question that two beds side by side could answer.</Empty>
        ) : null}
        <Table
          caption="Trials, the newest first"
          columns={[{ head: 'question' }, { head: 'plots', number: true }, { head: 'where it stands' }]}
          rows={trials.map((trial) => ({
            key: trial.id,
            mine: trial.isMine,
            cells: [
              <div key="what">
                <Link href={`${at}/${trial.id}`}>{trial.question}</Link>
                <div className="small soft">
                  {trial.cropName}, {trial.season}
                </div>
              </div>,
              trial.state === 'joining' || trial.state === 'too-few'
                ? `${trial.plots} (${trial.leastPlots} wanted)`
                : trial.plots,
              <div key="state">
                {trialStateWords(trial.state)}
                {trial.isMine ? ', with you' : ''}
                <div className="small soft">{nextDay(trial)}</div>
              </div>,
            ],
          }))}
        />
      </Sheet>
    </>
  );
}

function nextDay({ state, joinByOn, resultsByOn }: Awaited<ReturnType<typeof readTrials.run>>['trials'][number]) {
  if (state === 'joining') return `join by ${shortDayWords(joinByOn)}`;
  return state === 'running' ? `results by ${shortDayWords(resultsByOn)}` : '';
}
