import 'server-only';
import { createUseSaid } from '@/lib/data/household-use';
import { lotsOf } from '@/lib/data/store-lot';
import { parseMonthDay } from '@/lib/domain/calendar/month-day';
import { keepingOf } from '@/lib/domain/catalogue/keepings';
import { canEnter } from '@/lib/domain/policy/standing';
import type { Units } from '@/lib/domain/quantity/length';
import { readMass } from '@/lib/domain/quantity/mass';
import { pieceWeightG } from '@/lib/domain/store/piece-weight';
import { sayUseInput } from '@/lib/schemas/store/use';
import { mutation } from '../operation';
import { refuse } from '../refusal';
import { storeHolding } from './open-store';

const mostTenths = 100_000;

/** Say how much of a kind the household uses a week, and when its new crop is looked for. What was said before stays on record. */
export const sayUse = mutation({
  name: 'say-use',
  allow: canEnter,
  input: sayUseInput,
  write: async ({ tx, scope, today, now, note }, { holdingId, keepingKey, perWeek, newCropFrom: typedDay }) => {
    await storeHolding({ db: tx, scope, today }, holdingId);
    if (!keepingOf(keepingKey)) refuse('no-such-keeping', { field: 'keepingKey' });
    const pieceG = pieceWeightG(keepingKey, await lotsOf(tx, scope, [holdingId]));
    const tenthsPerWeek = perWeek === '' ? null : readUse(perWeek, pieceG, scope.units);
    const newCropFrom = typedDay === '' ? null : parseMonthDay(typedDay);
    if (typedDay !== '' && newCropFrom === null) refuse('no-day-of-year', { field: 'newCropFrom' });
    const useId = await createUseSaid(tx, scope, { holdingId, keepingKey, tenthsPerWeek, newCropFrom }, now);
    note({ verb: 'said', thing: 'household use', thingId: useId, forHoldingId: holdingId });
    return { useId };
  },
});

// Pieces as a bare number; with a unit it is a weight, and as many pieces as that makes.
function readUse(text: string, pieceG: number, units: Units): number {
  const massG = readMass(text, units);
  const isBare = /^\d+(?:[.,]\d+)?$/.test(text);
  const pieces = isBare ? Number(text.replace(',', '.')) : massG === null ? null : massG / pieceG;
  const tenths = pieces === null ? 0 : Math.round(pieces * 10);
  return tenths >= 1 && tenths <= mostTenths ? tenths : refuse('use-wrong', { field: 'perWeek' });
}
