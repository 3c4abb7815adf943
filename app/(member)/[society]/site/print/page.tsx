import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { ComplianceTable } from '@/app/_ui/compliance';
import { PlanKey } from '@/app/_ui/hatches';
import { PathKey } from '@/app/_ui/plan-layers';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead } from '@/app/_ui/sheet';
import { SitePlan } from '@/app/_ui/site-plan';
import { readSite } from '@/lib/usecases/site/read-site';

export const metadata: Metadata = { title: 'The plan to print' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string; site?: string }> };

export default async function PrintPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked, site: siteId } = await searchParams;
  const read = await ask(readSite, society, { season: asked ?? null, siteId: siteId ?? null });
  if (!read.site) return <Empty>There is no site to print yet.</Empty>;
  const { site, season, thisYear, plan, compliance, units } = read;
  return (
    <>
      <PageHead title={`${site.name}, season ${season}${season > thisYear ? ', as planned' : ''}`} />
      <p className="wide no-print">
        <PrintButton>Print on A3 or A4, landscape</PrintButton>
      </p>
      <div className="wide">
        <SitePlan
          name={site.name}
          season={season}
          plots={plan}
          paths={site.paths}
          dropPoints={site.dropPoints}
          northCentideg={site.northCentideg}
        />
        <PlanKey>
          <PathKey />
        </PlanKey>
      </div>
      <div>
        <ComplianceTable areas={compliance.total} units={units} />
      </div>
    </>
  );
}
