import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { ComplianceBar, ComplianceByGroup, ComplianceTable, Trend } from '@/app/_ui/compliance';
import { PlanKey } from '@/app/_ui/hatches';
import { Findings, Verdict } from '@/app/_ui/judgement';
import { PathKey } from '@/app/_ui/plan-layers';
import { PlanViewer } from '@/app/_ui/plan-viewer';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { SitePlan } from '@/app/_ui/site-plan';
import { SiteSwitch } from '@/app/_ui/site-switch';
import { Table } from '@/app/_ui/table';
import { readSite } from '@/lib/usecases/site/read-site';

export const metadata: Metadata = { title: 'Site' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string; site?: string }> };

export default async function SitePage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked, site: siteId } = await searchParams;
  const read = await ask(readSite, society, { season: asked ?? null, siteId: siteId ?? null });
  if (!read.site)
    return (
      <>
        <PageHead title="Site" />
        <Empty>
          {read.runs ? (
            <Link href={`/${society}/office/plots`}>Add the site and its plots first</Link>
          ) : (
            'The secretary has not added the site yet.'
          )}
        </Empty>
      </>
    );
  const { site, sites, season, thisYear, plan, compliance, short, shortLeftOut, trend, units, unmeasured, runs } = read;
  return (
    <>
      <PageHead
        title={`${site.name}, what stands where`}
        lead={`${plan.length} plots${unmeasured ? `, ${unmeasured} of them not measured and drawn dashed` : ''}. Tap one of your beds for its history.`}
      >
        <SiteSwitch sites={sites} siteId={site.id} query={{ season: String(season) }} />
        <Link className="button" href={`/${society}/site/print?season=${season}&site=${site.id}`}>
          To print
        </Link>
        <Link className="button" href={`/${society}/site/heap?site=${site.id}`}>
          Where the heap walks least
        </Link>
      </PageHead>
      <Sheet
        title={`Season ${season}${season > thisYear ? ', as planned' : ''}`}
        flush
        wide
        aside={
          <SeasonSwitch
            seasons={[3, 2, 1, 0, -1].map((back) => thisYear - back)}
            season={season}
            thisYear={thisYear}
            query={sites.length > 1 ? { site: site.id } : {}}
          />
        }
      >
        {plan.length === 0 ? (
          <Empty>
            {runs ? <Link href={`/${society}/office/plots`}>Take in the list of plots</Link> : 'No plots yet.'}
          </Empty>
        ) : null}
        {plan.length ? (
          <PlanViewer>
            <SitePlan
              name={site.name}
              season={season}
              plots={plan}
              paths={site.paths}
              dropPoints={site.dropPoints}
              northCentideg={site.northCentideg}
            />
          </PlanViewer>
        ) : null}
        <PlanKey>
          <PathKey />
        </PlanKey>
      </Sheet>
      <Sheet title="Kept, short, not known" aside={<span className="soft">{season}</span>}>
        <ComplianceBar areas={compliance.total} />
        <ComplianceTable areas={compliance.total} units={units} />
      </Sheet>
      <Sheet title="By crop group" flush>
        {compliance.byGroup.length ? (
          <ComplianceByGroup groups={compliance.byGroup} units={units} />
        ) : (
          <Empty>Nothing is recorded for {season} yet.</Empty>
        )}
      </Sheet>
      <Sheet title="Season by season" flush>
        <Trend seasons={trend} thisYear={thisYear} />
      </Sheet>
      <Sheet title="Where it falls short" flush>
        {short.length === 0 ? <Empty>No bed that you may see falls short in {season}.</Empty> : null}
        <Table
          caption="Beds that fall short"
          columns={[{ head: 'bed' }, { head: 'crop' }, { head: 'why' }]}
          rows={short.map(({ plotNumber, bedName, bedId, cropName, shortCm2, areaCm2, findings }, at) => ({
            key: `${plotNumber} ${bedName} ${at}`,
            cells: [
              bedId ? (
                <Link key="bed" href={`/${society}/ground/beds/${bedId}`}>{`${plotNumber}, ${bedName}`}</Link>
              ) : (
                `${plotNumber}, ${bedName}`
              ),
              <div key="crop">
                {cropName}
                <div>
                  <Verdict verdict="short" shortCm2={shortCm2} areaCm2={areaCm2} />
                </div>
              </div>,
              <Findings key="why" findings={findings} areaCm2={areaCm2} />,
            ],
          }))}
        />
        {shortLeftOut ? (
          <p className="sheet-body soft">
            These {short.length} have most ground that falls short; {shortLeftOut} more are marked on the plan.
          </p>
        ) : null}
      </Sheet>
    </>
  );
}
