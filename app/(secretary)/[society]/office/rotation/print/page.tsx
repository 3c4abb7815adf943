import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { ComplianceTable } from '@/app/_ui/compliance';
import { dayWords } from '@/app/_ui/delivery-words';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readRotation } from '@/lib/usecases/site/read-rotation';
import { HowItHolds } from '../_parts/how-it-holds';

export const metadata: Metadata = { title: 'Rotation report' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string; site?: string }> };

export default async function RotationReportPage({ params, searchParams }: Props) {
  const { society } = await params;
  const { season: asked, site: siteId } = await searchParams;
  const read = await ask(readRotation, society, { season: asked ?? null, siteId: siteId ?? null });
  if (!read.site) return <Empty>There is no site to report on yet.</Empty>;
  const { societyName, site, season, thisYear, today, units, total } = read;
  return (
    <>
      <PageHead
        title={`${societyName}: the rotation in ${season}${season > thisYear ? ', as planned' : ''}`}
        lead={`${site.name}. From the records of ${dayWords(today)}; plot numbers and no names.`}
      />
      <p className="wide no-print">
        <PrintButton>Print on A4</PrintButton>
      </p>
      <Sheet title="The whole site" flush>
        <ComplianceTable areas={total} units={units} />
      </Sheet>
      <HowItHolds read={read} />
    </>
  );
}
