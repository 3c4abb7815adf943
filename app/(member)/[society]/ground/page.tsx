import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { SelectField } from '@/app/_ui/field';
import { PlanKey } from '@/app/_ui/hatches';
import { NeedReason } from '@/app/_ui/need-reason';
import { SeasonSwitch } from '@/app/_ui/season-switch';
import { Caution, Empty, PageHead, Reason, Sheet } from '@/app/_ui/sheet';
import { SitePlan } from '@/app/_ui/site-plan';
import { Table } from '@/app/_ui/table';
import { SoilCaution } from '@/app/_ui/trouble-words';
import { formatArea } from '@/lib/domain/quantity/area';
import { formatLength } from '@/lib/domain/quantity/length';
import { readGround } from '@/lib/usecases/ground/read-ground';
import { SheetLink } from './_parts/sheet-link';

export const metadata: Metadata = { title: 'My ground' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string; holding?: string }> };

export default async function GroundPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked, holding } = await searchParams;
  const { today, season, plan, need, units, holdings, everybody, nearby, isOwn, sheets } = await ask(
    readGround,
    society,
    {
      season: asked ?? null,
      holdingId: holding || null,
    },
  );
  const year = Number(today.slice(0, 4));
  const who = holdings.flatMap(({ members }) => members.map(({ name }) => name)).join(' and ');
  return (
    <>
      <PageHead
        title={isOwn ? 'My ground' : `Ground of ${who}`}
        lead={isOwn ? undefined : 'You keep it for them; the book says so.'}
      >
        {everybody.length ? (
          <form className="inline-form" method="get">
            <SelectField
              name="holding"
              label="Keep somebody’s ground"
              value={holding ?? ''}
              empty="your own"
              choices={everybody.map(({ id, label }) => ({ value: id, label }))}
            />
            <button type="submit" className="button">
              Open
            </button>
          </form>
        ) : null}
        {isOwn ? (
          <>
            <Link className="button" href={`/${society}/dates`}>
              Dates
            </Link>
            <Link className="button" href={`/${society}/seed`}>
              Seed
            </Link>
            <Link className="button" href={`/${society}/ground/harvests`}>
              Harvests
            </Link>
            <Link className="button" href={`/${society}/store`}>
              Store
            </Link>
            <Link className="button" href={`/${society}/ground/recipes`}>
              Recipes and habits
            </Link>
            <Link className="button" href={`/${society}/measures`}>
              Measures
            </Link>
            <Link className="button" href={`/${society}/ground/residue`}>
              Residue tests
            </Link>
          </>
        ) : null}
      </PageHead>
      {plan.length === 0 ? (
        <Empty>You hold no plot at present. The secretary lets plots; once yours is let to you, it stands here.</Empty>
      ) : null}
      {nearby ? (
        <div className="wide">
          <Caution>
            A trouble of the soil has been found near {isOwn ? 'your' : 'this'} ground. <SoilCaution />
          </Caution>
        </div>
      ) : null}
      {plan.map((plot) => (
        <Sheet
          key={plot.id}
          title={`Plot ${plot.number}, season ${season}`}
          flush
          aside={
            <SeasonSwitch
              seasons={[year - 2, year - 1, year, year + 1]}
              season={season}
              thisYear={year}
              query={holding ? { holding } : {}}
            />
          }
        >
          <SitePlan name={`Plot ${plot.number}`} season={season} plots={plan} only={plot.id} />
          <PlanKey />
          <div className="sheet-body">
            <p className="actions no-print">
              <Link className="button first" href={`/${society}/ground/plots/${plot.id}/beds`}>
                {plot.beds.length ? 'Draw another bed' : 'Draw your beds'}
              </Link>
              {plot.beds.length ? (
                <>
                  <Link className="button" href={`/${society}/ground/plots/${plot.id}/seasons`}>
                    Fill in seasons
                  </Link>
                  <Link className="button" href={`/${society}/ground/course${holding ? `?holding=${holding}` : ''}`}>
                    Plan the coming years
                  </Link>
                  <Link
                    className="button"
                    href={`/${society}/ground/plots/${plot.id}/print?season=${season}${holding ? `&holding=${holding}` : ''}`}
                  >
                    Season plan to print
                  </Link>
                </>
              ) : null}
            </p>
          </div>
          {plot.beds.length ? (
            <Table
              caption={`Beds of plot ${plot.number}`}
              columns={[{ head: 'bed' }, { head: 'size' }, { head: `in ${season}` }]}
              rows={plot.beds.map(({ id, name, footprint, plantings, mark }) => ({
                key: id,
                mine: mark !== null,
                cells: [
                  <Link key="name" href={`/${society}/ground/beds/${id}`}>
                    {name}
                  </Link>,
                  `${formatLength(footprint.widthCm, units)} × ${formatLength(footprint.lengthCm, units)}`,
                  <>
                    {[plantings.map(({ cropName }) => cropName).join(', ') || 'nothing recorded', mark ?? '']
                      .filter(Boolean)
                      .join(' · ')}
                    <SheetLink
                      society={society}
                      bedId={id}
                      isDue={mark === 'turn due'}
                      sheet={sheets.find(({ bedId }) => bedId === id)}
                    />
                  </>,
                ],
              }))}
            />
          ) : null}
        </Sheet>
      ))}
      {plan.length ? (
        <Sheet
          title={
            need.loads === 0 ? `No manure needed for ${need.season}` : `${need.loads} barrow-loads for ${need.season}`
          }
        >
          <p>
            {formatArea(
              need.lines.reduce((sum, { turn }) => sum + turn.dueCm2, 0),
              units,
            )}{' '}
            is due its turn
            {need.lines.some(({ turn }) => turn.unloggedCm2)
              ? ', and ground without a record counts in part, “assumed”.'
              : '.'}
          </p>
          <Reason ask={`Why ${need.loads}?`}>
            <NeedReason need={need} units={units} />
          </Reason>
          <p className="actions">
            <Link className="button" href={`/${society}/deliveries`}>
              To the deliveries
            </Link>
          </p>
          <Caution>
            A barrow-load of manure weighs {Math.round(need.barrowLoadG / 1000)} kg or more. Wear gloves, take
            half-loads where a full one strains you, and wash your hands before you eat. Where in doubt, ask your doctor
            or your society.
          </Caution>
        </Sheet>
      ) : null}
    </>
  );
}
