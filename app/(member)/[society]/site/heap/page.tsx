import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { loadsWords } from '@/app/_ui/delivery-words';
import { PathKey } from '@/app/_ui/plan-layers';
import { PlanViewer } from '@/app/_ui/plan-viewer';
import { Caution, Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { SitePlan, type Wheeled } from '@/app/_ui/site-plan';
import { SiteSwitch } from '@/app/_ui/site-switch';
import { formatMassIn } from '@/lib/domain/quantity/mass';
import { readHeapPlacing } from '@/lib/usecases/site/read-heap-placing';
import { Asked } from './_parts/asked';
import { ByPlot } from './_parts/by-plot';
import { Compared } from './_parts/compared';
import { Found } from './_parts/found';
import { wayWords } from './_parts/heap-words';
import { LeftOut } from './_parts/left-out';
import { hereOf, type Placed, unitFor } from './_parts/placed';

export const metadata: Metadata = { title: 'Where the heap walks least' };

type Search = { site?: string; loads?: string; allowed?: string; from?: string; said?: string };

const said: Readonly<Record<string, string>> = {
  made: 'It is a drop point now.',
  'made-and-sent': 'It is a drop point now, and the delivery is to be tipped there. Whoever booked is told.',
  sent: 'The delivery is to be tipped there. Whoever booked is told.',
};

type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function HeapPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { site: siteId = null, loads = null, allowed = null, from = null, said: saying } = await searchParams;
  const read = await ask(readHeapPlacing, society, { siteId, loads, allowed, from });
  if (!read.site)
    return (
      <>
        <PageHead title="Where the heap walks least" />
        <Empty>The secretary has not added the site yet.</Empty>
      </>
    );
  const { site, sites, fromId, dropPoints, placing } = read;
  const here = hereOf(read);
  const fromName = fromId ? (dropPoints.find(({ id }) => id === fromId)?.name ?? '') : 'the best place';
  const linkTo = (id: string) => `?${new URLSearchParams({ ...here, from: id })}`;
  return (
    <>
      <PageHead title="Where the heap walks least" lead={leadOf(read)}>
        <SiteSwitch sites={sites} siteId={site.id} />
        {read.runs ? (
          <Link className="button" href={`/${society}/office/paths?site=${site.id}`}>
            Paths and drop points
          </Link>
        ) : null}
      </PageHead>
      {said[saying ?? ''] ? (
        <p className="notice kept wide" role="status">
          {said[saying ?? '']}
        </p>
      ) : null}
      <Asked siteId={site.id} deliveries={read.deliveries} chosen={here.loads} allowed={read.allowed} />
      <Sheet title={`From ${fromName}`} flush wide>
        <PlanViewer>
          <SitePlan
            name={site.name}
            plots={read.plan}
            paths={read.paths}
            dropPoints={dropPoints}
            northCentideg={site.northCentideg}
            wheeled={wheeledOf(read)}
            best={placing.best?.at ?? null}
          />
        </PlanViewer>
        <ul className="key">
          <PathKey withBest />
          <li>
            {read.sees ? 'in each plot: loads × one way; the darker, the more loaded metres' : 'in each plot: one way'}
          </li>
        </ul>
      </Sheet>
      <div className="stack">
        <Found society={society} read={read} />
        <Compared society={society} read={read} linkTo={linkTo} />
        <Sheet title="How it is reckoned">
          <LeftOut read={read} />
          <Reason ask="To which plot do a holding’s loads go?">
            <p>
              A booking is for all plots of a holding together. Its loads are split by the ground that was due on the
              beds it names, or else by the size of the plots, in whole loads by the largest remainders.
            </p>
          </Reason>
          <Reason ask="What is a loaded metre?">
            <p>One full barrow wheeled one metre: seven loads to a plot 84 m away are 588 of them.</p>
          </Reason>
          <Caution>
            {read.basis.delivery
              ? `A ${unitFor(read) === 'bale' ? 'bale' : 'barrow-load'} weighs about ${formatMassIn(read.basis.delivery.loadG, read.units)}: `
              : 'A full barrow is heavy: '}
            wheel half-loads where the ground is soft or steep. Where the lorry reverses, somebody walks it in and
            everybody else stays well clear. Keep the gate and the way for fire engine and ambulance free of the heap.
          </Caution>
        </Sheet>
      </div>
      <div className="stack">
        <ByPlot read={read} from={fromName} />
      </div>
    </>
  );
}

function leadOf(read: Placed): string {
  const { basis, loads } = read;
  const all = loadsWords(loads.here + loads.elsewhere + loads.nowhere, unitFor(read));
  if (basis.kind === 'shares') return `${basis.delivery?.name}: the ${all} that were shared out.`;
  if (basis.kind === 'bookings') return `${basis.delivery?.name}: the ${all} that are asked for so far.`;
  return `The ${all} of ${basis.materialName?.toLowerCase()} that the ground needs for ${basis.season}.`;
}

/** What stands in each plot: loads and way where they are the viewer's to see, the way alone elsewhere. */
function wheeledOf({ lines, sees, units }: Placed): ReadonlyMap<string, Wheeled> {
  const most = Math.max(1, ...lines.map(({ loadedCm }) => loadedCm ?? 0));
  return new Map(
    lines.map(({ id, loads, wayCm, loadedCm }) => {
      const way = wayWords(wayCm, units);
      const word = loads === null ? way : loads ? `${loads} × ${way}` : sees ? '–' : way;
      return [id, { word, share: (loadedCm ?? 0) / most }];
    }),
  );
}
