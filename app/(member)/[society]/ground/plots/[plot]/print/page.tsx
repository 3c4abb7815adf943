import type { Metadata } from 'next';
import { notFound } from 'next/navigation';
import { ask } from '@/app/_server/caller';
import { PlanKey } from '@/app/_ui/hatches';
import { PrintButton } from '@/app/_ui/print-button';
import { PageHead } from '@/app/_ui/sheet';
import { SitePlan } from '@/app/_ui/site-plan';
import { Table } from '@/app/_ui/table';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { formatLength } from '@/lib/domain/quantity/length';
import { readGround } from '@/lib/usecases/ground/read-ground';

export const metadata: Metadata = { title: 'Season plan to print' };

type Search = { season?: string; holding?: string };
type Props = { params: Promise<{ society: string; plot: string }>; searchParams: Promise<Search> };

export default async function PlotPrintPage({ params, searchParams }: Props) {
  const { society, plot: plotId } = await params;
  const { season: asked, holding } = await searchParams;
  const { plan, season, today, units } = await ask(readGround, society, {
    season: asked ?? null,
    holdingId: holding || null,
  });
  const plot = plan.find(({ id }) => id === plotId);
  if (!plot) notFound();
  const isPlanned = season > Number(today.slice(0, 4));
  return (
    <>
      <PageHead
        title={`Plot ${plot.number}, season ${season}${isPlanned ? ', as planned' : ''}`}
        lead={`Drawn ${today}.`}
      />
      <p className="wide no-print">
        <PrintButton>Print on A4 or A3</PrintButton>
      </p>
      <div className="wide">
        <SitePlan name={`Plot ${plot.number}`} season={season} plots={plan} only={plot.id} />
        <PlanKey />
      </div>
      <div className="wide paper">
        <Table
          caption="Beds of the season"
          columns={[{ head: 'bed' }, { head: 'size' }, { head: 'crop' }, { head: 'group' }, { head: 'manure' }]}
          rows={plot.beds.map(({ id, name, footprint, plantings, mark }) => ({
            key: id,
            cells: [
              <b key="bed">{name}</b>,
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
