import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { ComplianceBar, ComplianceTable } from '@/app/_ui/compliance';
import { SelectField } from '@/app/_ui/field';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { SiteSwitch } from '@/app/_ui/site-switch';
import { Table } from '@/app/_ui/table';
import { hostGroups } from '@/lib/domain/catalogue/host-groups';
import { formatArea } from '@/lib/domain/quantity/area';
import { readRotation } from '@/lib/usecases/site/read-rotation';
import { HowItHolds } from './_parts/how-it-holds';

export const metadata: Metadata = { title: 'How the rotation holds' };

type Search = { season?: string; site?: string; group?: string; more?: string };
type Props = { params: Promise<{ society: string }>; searchParams: Promise<Search> };

export default async function RotationPage({ params, searchParams }: Props) {
  const { society } = await params;
  const search = await searchParams;
  const read = await ask(readRotation, society, { ...search, siteId: search.site ?? null });
  if (!read.site)
    return (
      <>
        <PageHead title="How the rotation holds" />
        <Empty>There is no site yet. Add it, and its plots, first.</Empty>
      </>
    );
  const { site, sites, season, thisYear, units, total, whatIf } = read;
  const place = `season=${season}&site=${site.id}`;
  return (
    <>
      <PageHead title="How the rotation holds" lead={`${site.name}, by season, group, trouble and plot; no names.`}>
        <SiteSwitch sites={sites} siteId={site.id} query={{ season: String(season) }} />
        <Link className="button" href={`/${society}/office/rotation/print?${place}`}>
          Report to print
        </Link>
        <a className="button" href={`/api/rotation/${society}?season=${season}&siteId=${site.id}`}>
          By plot, as CSV
        </a>
      </PageHead>
      <Sheet
        title={`Season ${season}${season > thisYear ? ', as planned' : ''}`}
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
        <ComplianceBar areas={total} />
        <ComplianceTable areas={total} units={units} />
      </Sheet>
      <Sheet title="What if a kin had to wait longer, or less?">
        <form method="get" className="form">
          <input type="hidden" name="season" value={season} />
          <input type="hidden" name="site" value={site.id} />
          <div className="row">
            <SelectField
              name="group"
              label="Kin"
              value={search.group ?? 'allium-kin'}
              choices={hostGroups.map(({ key, name }) => ({ value: key, label: name }))}
            />
            <SelectField
              name="more"
              label="Clear years"
              value={search.more ?? '1'}
              choices={[-2, -1, 1, 2, 3, 4].map((more) => ({
                value: String(more),
                label: more > 0 ? `${more} more` : `${-more} fewer`,
              }))}
              className="short-field"
            />
          </div>
          <button type="submit" className="button">
            Try it
          </button>
        </form>
        {whatIf ? (
          <div role="status">
            <p>
              {whatIf.groupName}: {whatIf.years} clear years in place of {whatIf.presentYears}. Short{' '}
              {formatArea(whatIf.total.shortCm2, units)} in place of {formatArea(total.shortCm2, units)}; not known{' '}
              {formatArea(whatIf.total.notKnownCm2, units)} in place of {formatArea(total.notKnownCm2, units)}. Nothing
              is changed by asking.
            </p>
            {whatIf.plots.length === 0 ? <p>No plot would fall short by more or less.</p> : null}
            <Table
              caption="Plots that would fall short by more or less"
              columns={[{ head: 'plot' }, { head: 'more short', number: true }, { head: 'short then', number: true }]}
              rows={whatIf.plots.map(({ number, moreCm2, shortCm2 }) => ({
                key: number,
                cells: [
                  number,
                  `${moreCm2 < 0 ? '−' : '+'}${formatArea(Math.abs(moreCm2), units)}`,
                  formatArea(shortCm2, units),
                ],
              }))}
            />
          </div>
        ) : null}
      </Sheet>
      <HowItHolds read={read} />
    </>
  );
}
