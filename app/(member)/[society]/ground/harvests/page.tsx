import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readHarvests } from '@/lib/usecases/harvest/read-harvests';
import { HarvestList } from './_parts/harvest-list';
import { Logged } from './_parts/logged';
import { StandingList } from './_parts/standing-list';

export const metadata: Metadata = { title: 'Harvests' };

type Search = { season?: string; logged?: string; said?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function HarvestsPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked, logged, said } = await searchParams;
  const read = await ask(readHarvests, society, { season: asked ?? null });
  const { standing, harvests, season, seasons, today, units, holds } = read;
  const fresh = harvests.find(({ id }) => id === logged);
  return (
    <>
      <PageHead title="Harvests" lead="Tap what you lifted or picked. Nobody but the holders of this ground sees it.">
        <Link className="button" href={`/${society}/ground/harvests/yields`}>
          What the ground yielded
        </Link>
        <Link className="button" href={`/${society}/ground`}>
          Back to the ground
        </Link>
      </PageHead>
      {fresh ? <Logged society={society} harvest={fresh} units={units} /> : null}
      {said === 'taken-back' ? (
        <p className="notice kept wide" role="status">
          The harvest is taken back.
        </p>
      ) : null}
      <Sheet title="What stands on your ground">
        {standing.length ? (
          <StandingList society={society} standing={standing} />
        ) : (
          <Empty>
            {holds
              ? 'Nothing stands on record. Fill in this season on your plot’s page, and log from it here; what stood in earlier seasons is on the page of its bed.'
              : 'You hold no plot at present, so there is nothing to log from.'}
          </Empty>
        )}
      </Sheet>
      <Sheet
        title={`Logged of ${season}`}
        aside={<SeasonSwitch seasons={seasons} season={season} thisYear={Number(today.slice(0, 4))} query={{}} />}
      >
        {harvests.length ? (
          <HarvestList society={society} harvests={harvests} units={units} />
        ) : (
          <Empty>Nothing yet. Weigh or count what you bring home; a kitchen scale will do.</Empty>
        )}
      </Sheet>
    </>
  );
}
