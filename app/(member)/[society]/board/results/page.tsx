import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readResults } from '@/lib/usecases/notes/read-results';
import { questionWords } from '../_parts/results-words';
import { AskResults } from './_parts/ask-results';
import { Concluded } from './_parts/concluded';
import { OwnBeds } from './_parts/own-beds';
import { ResultsChart } from './_parts/results-chart';
import { WhatItCannotSay } from './_parts/what-it-cannot-say';

export const metadata: Metadata = { title: 'Comparing notes' };

type Search = { crop?: string; season?: string; by?: string; variety?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function ResultsPage({ params, searchParams }: Props) {
  const { society } = await params;
  const search = await searchParams;
  const { results, crops, units, sharesOwn } = await ask(readResults, society, search);
  const at = `/${society}/board/results`;
  return (
    <>
      <PageHead
        title="Comparing notes"
        lead="What neighbours’ beds gave, by how they were treated: from the records of those who agreed, without names, and nothing of fewer than three neighbours."
      >
        <Link className={sharesOwn === false ? 'button first' : 'button'} href={`${at}/sharing`}>
          {sharesOwn === false ? 'Let your own be compared' : 'What is shared'}
        </Link>
        <Link className="button" href={`/${society}/board`}>
          The board
        </Link>
        <PrintButton />
      </PageHead>
      <AskResults crops={crops} results={results} />
      {results ? (
        <>
          <Sheet title={titleOf(results)}>
            <ResultsChart results={results} units={units} />
          </Sheet>
          <Sheet title="What can be said">
            <Concluded results={results} units={units} />
          </Sheet>
          <OwnBeds results={results} units={units} society={society} />
          <WhatItCannotSay society={society} results={results} />
        </>
      ) : (
        <Sheet title="Nothing to compare yet" wide flush>
          <Empty>
            {search.crop
              ? 'The society grows no such crop. Choose one above.'
              : 'It wants three neighbours or more who log what they lift, and let it be compared. Log a harvest, and say under “What is shared” that yours may be.'}
          </Empty>
        </Sheet>
      )}
    </>
  );
}

type Results = NonNullable<Awaited<ReturnType<typeof readResults.run>>['results']>;

function titleOf({ crop, season, question, variety }: Results): string {
  const what = variety ? `${crop.name}, ${variety.name}` : crop.name;
  if (question === 'season') return `${what}, season by season`;
  return `${what}${season === null ? '' : `, ${season}`}: ${questionWords[question]}`;
}
