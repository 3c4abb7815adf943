import type { Metadata } from 'next';
import Link from 'next/link';
import { notFound } from 'next/navigation';
import { ask } from '@/app/_server/caller';
import { PlanKey } from '@/app/_ui/hatches';
import { PrintButton } from '@/app/_ui/print-button';
import { plotNumbers } from '@/app/_ui/plot-numbers';
import { PageHead } from '@/app/_ui/sheet';
import { SitePlan } from '@/app/_ui/site-plan';
import { Table } from '@/app/_ui/table';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { formatLength } from '@/lib/domain/quantity/length';
import { readGround } from '@/lib/usecases/ground/read-ground';

export const metadata: Metadata = { title: 'Season plan to print' };

type Search = { season?: string; holding?: string; all?: string };
type Props = { params: Promise<{ society: string; plot: string }>; searchParams: Promise<Search> };

export default async function PlotPrintPage({ params, searchParams }: Props) {
  const { society, plot: plotId } = await params;
  const { season: asked, holding, all } = await searchParams;
  const { plan, season, today, units } = await ask(readGround, society, {
    season: asked ?? null,
    holdingId: holding || null,
  });
  const plot = plan.find(({ id }) => id === plotId);
  if (!plot) notFound();
  // One plot, or all that are held together, as they lie to each other.
  const shown = all ? plan : [plot];
  const numbers = plotNumbers(shown);
  const title = `${shown.length === 1 ? 'Plot' : 'Plots'} ${numbers}`;
  const isPlanned = season > Number(today.slice(0, 4));
  return (
    <>
      <PageHead title={`${title}, season ${season}${isPlanned ? ', as planned' : ''}`} lead={`Drawn ${today}.`} />
      <p className="wide no-print">
        <PrintButton>Print on A4 or A3</PrintButton>{' '}
        {plan.length > 1 ? (
          <Link
            className="button"
            href={`?${new URLSearchParams({ season: String(season), ...(holding ? { holding } : {}), ...(all ? {} : { all: 'yes' }) })}`}
          >
            {all ? `Plot ${plot.number} alone` : 'All the plots together'}
          </Link>
        ) : null}
      </p>
      <div className="wide">
        <SitePlan name={title} season={season} plots={shown} {...(all ? {} : { only: plot.id })} />
        <PlanKey />
      </div>
      <div className="wide paper">
        <Table
          caption="Beds of the season"
          columns={[{ head: 'bed' }, { head: 'size' }, { head: 'crop' }, { head: 'group' }, { head: 'manure' }]}
          rows={shown
            .flatMap((one) => one.beds.map((each) => ({ ...each, number: one.number })))
            .map(({ id, number, name, footprint, plantings, mark }) => ({
              key: id,
              cells: [
                <b key="bed">{shown.length > 1 ? `${number}, ${name}` : name}</b>,
                `${formatLength(footprint.widthCm, units)} × ${formatLength(footprint.lengthCm, units)}`,
                plantings.map(({ cropName }) => cropName.replace(', any', '')).join(', ') || '–',
                [...new Set(plantings.flatMap(({ cropGroup }) => (cropGroup ? [cropGroupName(cropGroup)] : [])))].join(
                  ', ',
                ) || '–',
                mark === 'turn due' ? 'turn due' : '–',
              ],
            }))}
        />
      </div>
    </>
  );
}
