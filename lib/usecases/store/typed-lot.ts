import type { z } from 'zod';
import type { Scope } from '@/lib/data/scope';
import type { LotFacts } from '@/lib/data/store-lot';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { keepingOf } from '@/lib/domain/catalogue/keepings';
import type { Units } from '@/lib/domain/quantity/length';
import { readSmallMass } from '@/lib/domain/quantity/mass';
import { readAmount } from '@/lib/domain/store/lot-amount';
import type { correctLotInput } from '@/lib/schemas/store/lot';
import { refuse } from '../refusal';

type Typed = Omit<z.output<typeof correctLotInput>, 'writeId' | 'lotId'>;

/** Records that are older tell nothing of what is in the shed [days]. */
const longAgoDays = 3653;
const mostPieceG = 100_000;

/** What was typed of a lot, as it is kept; refused beside its field where it can't be. */
export function readLotFacts(
  { amount, pieceWeight, keepingKey, measure, putInOn, curingFrom, ...typed }: Typed,
  { scope, today }: { readonly scope: Scope; readonly today: CalendarDate },
): LotFacts {
  if (!keepingOf(keepingKey)) refuse('no-such-keeping', { field: 'keepingKey' });
  const putIn = readAmount(amount, measure, scope.units);
  if (!putIn) refuse('lot-amount-wrong', { field: 'amount', numbers: { measure } });
  if (putInOn > today) refuse('put-in-in-future', { field: 'putInOn' });
  if (putInOn < addDays(today, -longAgoDays)) refuse('put-in-long-ago', { field: 'putInOn' });
  if (curingFrom !== null && curingFrom > today) refuse('laid-out-in-future', { field: 'curingFrom' });
  const { variety, condition, goingOverDays, source, notes } = typed;
  const pieceG = readPieceWeight(pieceWeight, scope.units);
  const words = { variety, source, notes };
  return { ...words, keepingKey, measure, putIn, pieceG, putInOn, condition, goingOverDays, curingFrom };
}

function readPieceWeight(text: string, units: Units): number | null {
  if (text === '') return null;
  const pieceG = readSmallMass(text, units);
  if (!pieceG || pieceG > mostPieceG) refuse('piece-weight-wrong', { field: 'pieceWeight' });
  return pieceG;
}
