import 'server-only';
import { cropsOf } from '@/lib/data/crop';
import { appendOwnSowing } from '@/lib/data/seed-sowing';
import { canEnter } from '@/lib/domain/policy/standing';
import type { Units } from '@/lib/domain/quantity/length';
import { apartTyped, apartUnit } from '@/lib/domain/seed/apart-typed';
import { ownSowingOf, sowingBounds } from '@/lib/domain/seed/own-sowing';
import type { Apart } from '@/lib/domain/seed/plants-on';
import { changeSowingInput } from '@/lib/schemas/seed/tin';
import { mutation } from '../operation';
import { type Refusal, Refused, refuse } from '../refusal';

/** Say how one sows a crop oneself; what is left empty is as printed. The book notes that it was said, never what. */
export const changeSowing = mutation({
  name: 'change-sowing',
  allow: canEnter,
  input: changeSowingInput,
  write: async ({ tx, scope, now, note }, { cropKey, rows, inRow, from, germinationPercent, marginPercent }) => {
    if (!(await cropsOf(tx, scope)).has(cropKey))
      refuse('crop-unknown', { field: 'cropKey', numbers: { crop: cropKey } });
    const apart = readApart({ rows, inRow }, scope.units);
    const own = ownSowingOf({ apart, from, germinationPercent, marginPercent });
    await appendOwnSowing(tx, scope, cropKey, own, now);
    note({ verb: own ? 'set' : 'put back', thing: 'way of sowing', thingId: null });
    return { isOwn: own !== null };
  },
});

// Both distances or neither; what is wrong is said of both at once.
function readApart(typed: { readonly rows: string; readonly inRow: string }, units: Units): Apart | null {
  const [rows, inRow] = [typed.rows.trim(), typed.inRow.trim()];
  if (!rows && !inRow) return null;
  if (!rows || !inRow) refuse('both-distances', { field: rows ? 'inRow' : 'rows' });
  const [rowsCm, inRowCm] = [apartTyped(rows, units), apartTyped(inRow, units)];
  if (rowsCm !== null && inRowCm !== null) return { rowsCm, inRowCm };
  const numbers = { unit: apartUnit(units), mostM: sowingBounds.apartCm / 100 };
  const refusals: Refusal[] = [];
  if (rowsCm === null) refusals.push({ code: 'distance-wrong', field: 'rows', numbers });
  if (inRowCm === null) refusals.push({ code: 'distance-wrong', field: 'inRow', numbers });
  throw new Refused(refusals);
}
