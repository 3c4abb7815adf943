import Link from 'next/link';
import { trenchesWords } from '@/app/_ui/sheet-words';
import type { SheetLine } from '@/lib/usecases/sheets/sheet-line';

type Props = { society: string; bedId: string; isDue: boolean; sheet: SheetLine | undefined };

/** The way to a bed's ground sheet, or to a new one where its turn is due. */
export function SheetLink({ society, bedId, isDue, sheet }: Props) {
  if (sheet)
    return (
      <>
        {' · '}
        <Link href={`/${society}/ground/sheets/${sheet.id}`}>
          ground sheet: {sheet.done} of {trenchesWords(sheet, sheet.total)}
        </Link>
      </>
    );
  if (!isDue) return null;
  return (
    <>
      {' · '}
      <Link href={`/${society}/ground/beds/${bedId}/sheet`}>make a ground sheet</Link>
    </>
  );
}
