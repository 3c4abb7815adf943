import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { dayWords } from '@/app/_ui/delivery-words';
import { addDays } from '@/lib/domain/calendar/calendar-date';
import { loadMillionths } from '@/lib/domain/sharing/claim';
import { readReview } from '@/lib/usecases/review/read-review';
import { DecidedByHands } from './_parts/decided-by-hands';
import { HadByEach } from './_parts/had-by-each';
import { SeasonPage } from './_parts/season-page';
import { WhatWasBrought } from './_parts/what-was-brought';

export const metadata: Metadata = { title: 'Season review' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string }> };

export default async function ReviewPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked } = await searchParams;
  const read = await ask(readReview, society, { season: asked ?? null });
  const { season, parts, days, calledOff, largestCreditMillionths, isCommittee, readsHoldings } = read;
  const links = (
    <>
      {isCommittee ? (
        <Link className="button" href={`/${society}/review/landlord?season=${season}`}>
          For the landlord, without names
        </Link>
      ) : null}
      {readsHoldings ? (
        <Link className="button" href={`/${society}/deliveries/season?season=${season}`}>
          Loads and money in full
        </Link>
      ) : null}
    </>
  );
  const foot = (
    <p className="small soft">
      Deliveries from {dayWords(days.from)} to {dayWords(addDays(days.until, -1))} serve the season {season}.
      {calledOff ? ` Called off, and in no sum: ${calledOff}.` : ''} The largest credit that any holding carries on is{' '}
      {(largestCreditMillionths / loadMillionths).toFixed(2)} of a load.
    </p>
  );
  return (
    <SeasonPage read={read} title={`${read.society}: the season ${season}`} links={links} foot={foot}>
      <WhatWasBrought parts={parts} under={({ holdings }) => (holdings ? <HadByEach holdings={holdings} /> : null)} />
      <DecidedByHands society={society} decisions={read.decisions} />
    </SeasonPage>
  );
}
