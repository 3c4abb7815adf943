import type { Metadata } from 'next';
import { ask } from '@/app/_server/caller';
import { ComplianceByGroup, ComplianceByPlot, ComplianceTable, Trend } from '@/app/_ui/compliance';
import { dayWords } from '@/app/_ui/delivery-words';
import { PrintButton } from '@/app/_ui/print-button';
import { Empty, PageHead, Sheet } from '@/app/_ui/sheet';
import { readRotation } from '@/lib/usecases/site/read-rotation';

export const metadata: Metadata = { title: 'Rotation report' };

type Props = { params: Promise<{ society: string }>; searchParams: Promise<{ season?: string }> };

export default async function RotationReportPage({ params, searchParams }: Props) {
  const { society } = await params;
  const read = await ask(readRotation, society, await searchParams);
  if (!read.site) return <Empty>There is no site to report on yet.</Empty>;
  const { societyName, site, season, thisYear, today, units, total, byGroup, byPlot, trend } = read;
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
      <Sheet title="By crop group" flush>
        <ComplianceByGroup groups={byGroup} units={units} />
      </Sheet>
      <Sheet title="Season by season" flush>
        <Trend seasons={trend} thisYear={thisYear} />
      </Sheet>
      <Sheet title="By plot" flush wide>
        <ComplianceByPlot plots={byPlot} units={units} />
      </Sheet>
    </>
  );
}
