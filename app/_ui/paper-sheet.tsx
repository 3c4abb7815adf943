import { PrintButton } from '@/app/_ui/print-button';
import { PageHead } from '@/app/_ui/sheet';
import { type Column, Table } from '@/app/_ui/table';

type Row = { readonly key: string; readonly cells: readonly React.ReactNode[] };

/** A list to print on A4 and hang by the heap, legible at arm's length. */
export function PaperSheet({
  title,
  lead,
  caption,
  columns,
  rows,
}: {
  title: string;
  lead: string;
  caption: string;
  columns: readonly Column[];
  rows: readonly Row[];
}) {
  return (
    <>
      <PageHead title={title} lead={lead} />
      <p className="wide no-print">
        <PrintButton>Print on A4</PrintButton>
      </p>
      <div className="wide paper">
        <Table caption={caption} columns={columns} rows={rows} />
      </div>
    </>
  );
}
