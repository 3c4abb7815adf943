import type { Metadata } from 'next';
import Link from 'next/link';
import { ask } from '@/app/_server/caller';
import { PrintButton } from '@/app/_ui/print-button';
import { readSheet } from '@/lib/usecases/sheets/read-sheet';
import { PaperFigures } from '../_parts/paper-figures';
import { PaperStages } from '../_parts/paper-stages';

export const metadata: Metadata = { title: 'Ground sheet to print' };

type Props = { params: Promise<{ society: string; sheet: string }> };

/** The sheet on two pages of A4, for the shed wall or the barrow: how it goes, and how much of everything. */
export default async function SheetPrintPage({ params }: Props) {
  const { society, sheet: sheetId } = await params;
  const read = await ask(readSheet, society, { sheetId });
  return (
    <div className="wide ground-paper">
      <p className="no-print actions">
        <PrintButton>Print on two pages of A4</PrintButton>
        <Link className="button" href={`/${society}/ground/sheets/${sheetId}`}>
          Back to the sheet
        </Link>
      </p>
      <PaperStages read={read} />
      <PaperFigures read={read} />
    </div>
  );
}
