import Link from 'next/link';
import { Sheet } from '@/app/_ui/sheet';
import { trenchesWords } from '@/app/_ui/sheet-words';
import { cropGroupName } from '@/lib/domain/catalogue/crop-groups';
import { diggingMethodOf } from '@/lib/domain/catalogue/digging-methods';
import type { SheetLine } from '@/lib/usecases/sheets/sheet-line';

type Props = { society: string; bedId: string; sheets: readonly SheetLine[]; isRetired: boolean };

/** The ground sheets of this ground, and the way to a new one. */
export function GroundSheets({ society, bedId, sheets, isRetired }: Props) {
  if (isRetired && sheets.length === 0) return null;
  return (
    <Sheet title="Ground sheets">
      {sheets.length ? (
        <ul>
          {sheets.map(({ id, group, season, method, done, total }) => (
            <li key={id}>
              <Link href={`/${society}/ground/sheets/${id}`}>
                {diggingMethodOf(method).name} for {cropGroupName(group).toLowerCase()}, {season}
              </Link>
              : {done === total ? 'all done' : `${done} of ${trenchesWords({ method }, total)} done`}
            </li>
          ))}
        </ul>
      ) : (
        <p>
          Step by step, with drawings: how the ground is dug, what goes into each trench, and how many days it takes.
        </p>
      )}
      {isRetired ? null : (
        <p className="actions">
          <Link className="button" href={`/${society}/ground/beds/${bedId}/sheet`}>
            Make a ground sheet
          </Link>
        </p>
      )}
    </Sheet>
  );
}
