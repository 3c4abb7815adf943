import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { readLandlordReview } from '@/lib/usecases/review/read-review';
import { SeasonPage } from '../_parts/season-page';
import { WhatWasBrought } from '../_parts/what-was-brought';

export const metadata: Metadata = { title: 'Season review for the landlord' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string }> };

export default async function LandlordReviewPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked } = await searchParams;
  const read = await ask(readLandlordReview, society, { season: asked ?? null });
  const { season, parts } = read;
  const links = (
    <Link className="button" href={`/${society}/review?season=${season}`}>
      As members read it
    </Link>
  );
  const foot = (
    <p className="small soft">
      Left out, since it could point to somebody: names of members, numbers of plots, what a single holding had, where a
      trouble was found, names of deliveries and suppliers, money. Fewer than three holdings are never told of by
      themselves.
    </p>
  );
  return (
    <SeasonPage read={read} title={`${read.society}: the season ${season}, for the landlord`} links={links} foot={foot}>
      <WhatWasBrought parts={parts} />
    </SeasonPage>
  );
}
