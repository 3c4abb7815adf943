import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { Empty, PageHead } from '@/app/_ui/sheet';
import { readSeed } from '@/lib/usecases/seed/read-seed';
import { HoldingSwitch } from './_parts/holding-switch';
import { PlantingsNeed } from './_parts/plantings-need';
import { ToOrder } from './_parts/to-order';

export const metadata: Metadata = { title: 'Seed' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string; holding?: string }> };

export default async function SeedPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked, holding: holdingId } = await searchParams;
  const read = await ask(readSeed, society, { season: asked ?? null, holdingId: holdingId || null });
  const { season, thisYear, holding, holdings } = read;
  return (
    <>
      <PageHead
        title={`Seed for ${season}`}
        lead="What your plan needs, what your tin holds of it, and what is to order."
      >
        <Link className="button" href={`/${society}/seed/tin`}>
          The tin
        </Link>
        <Link className="button" href={`/${society}/seed/orders`}>
          The society’s orders
        </Link>
      </PageHead>
      <div className="wide">
        <SeasonSwitch
          seasons={[thisYear, thisYear + 1]}
          season={season}
          thisYear={thisYear}
          query={holdingId ? { holding: holdingId } : {}}
        />
        <HoldingSwitch holdings={holdings} at={holding?.id ?? null} query={{ season: String(season) }} />
      </div>
      {holding === null ? (
        <Empty>You hold no plot at present. Once one is let to you, the seed for your plan stands here.</Empty>
      ) : read.plantings.length === 0 ? (
        <Empty>
          Nothing is planned for {season} yet.{' '}
          <Link href={`/${society}/ground?season=${season}`}>Plan what goes on each bed</Link>, and this page says what
          seed it takes.
        </Empty>
      ) : (
        <>
          <ToOrder society={society} read={read} />
          <PlantingsNeed society={society} read={read} />
        </>
      )}
    </>
  );
}
