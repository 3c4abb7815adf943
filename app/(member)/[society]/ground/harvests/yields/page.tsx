import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readYields } from '@/lib/usecases/harvest/read-yields';
import { WhatTheySay } from '../_parts/what-they-say';
import { YieldsTable } from '../_parts/yields-table';

export const metadata: Metadata = { title: 'What the ground yielded' };

export default async function YieldsPage({ params }: { params: Promise<{ society: string }> }) {
  const { society } = await params;
  const { crops, units, onSeveralPlots } = await ask(readYields, society);
  return (
    <>
      <PageHead
        title="What the ground yielded"
        lead="Your own beds, season by season, from what you weighed or counted. Nobody but the holders of this ground sees it."
      >
        <Link className="button" href={`/${society}/ground/harvests`}>
          Log a harvest
        </Link>
        <Link className="button" href={`/${society}/board/results`}>
          What neighbours’ beds gave
        </Link>
        {crops.length ? (
          <a className="button" href={`/api/harvests/${society}`}>
            All harvests as CSV
          </a>
        ) : null}
      </PageHead>
      <Sheet title="By crop, season and bed" flush wide>
        {crops.length ? (
          <YieldsTable crops={crops} units={units} withPlot={onSeveralPlots} />
        ) : (
          <Empty>
            Nothing is weighed or counted yet. Log a harvest, and what the bed gave on each square metre follows.
          </Empty>
        )}
      </Sheet>
      {crops.length ? <WhatTheySay crops={crops} units={units} /> : null}
    </>
  );
}
