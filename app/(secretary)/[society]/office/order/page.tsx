import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { ReckonAs } from '@/app/_ui/reckon-as';
import { Caution, Empty, PageHead } from '@/app/_ui/sheet';
import { readOrder } from '@/lib/usecases/ordering/read-order';
import { Offers } from './_parts/offers';
import { OldHeaps } from './_parts/old-heaps';
import { Outlook } from './_parts/outlook';
import { Planned } from './_parts/planned';
import { Reckoning } from './_parts/reckoning';

export const metadata: Metadata = { title: 'What to order' };

type Search = { site?: string; season?: string; material?: string; seen?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function OrderPage({ params, searchParams }: Props) {
  const { society } = await params;
  const search = await searchParams;
  const read = await ask(readOrder, society, {
    siteId: search.site || null,
    season: search.season ?? null,
    materialKey: search.material ?? null,
  });
  if (!read.site)
    return (
      <>
        <PageHead title="What to order" />
        <Empty>There is no site yet. Add it, and its plots, first.</Empty>
      </>
    );
  const { site, sites, season, material, materials } = read;
  return (
    <>
      <PageHead
        title="What to order"
        lead={`${site.name}: what the ground needs, less what lies there and what is coming.`}
      >
        <ReckonAs season={season} site={site} sites={sites} materialKey={material.key} materials={materials} />
      </PageHead>
      {search.seen === undefined ? null : (
        <p className="notice kept wide" role="status">
          {Number(search.seen) > 0
            ? `Noted: about ${Number(search.seen)} loads left.`
            : 'Noted: nothing is left there.'}
        </p>
      )}
      <div className="stack">
        <Reckoning society={society} read={read} />
        <Offers society={society} read={read} />
        <Outlook read={read} />
      </div>
      <div className="stack">
        <Planned society={society} read={read} />
        <OldHeaps society={society} heaps={read.heaps} />
        <Caution>
          Ask every supplier what was sprayed on the hay and straw: weedkiller passes through horses and lasts in the
          heap. Test a bucketful before you order more.
        </Caution>
      </div>
    </>
  );
}
