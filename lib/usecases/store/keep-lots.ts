import 'server-only';
import { changeLotRow, type LotFacts, type LotRecord, retireLotRow } from '@/lib/data/store-lot';
import { canEnter } from '@/lib/domain/policy/standing';
import { correctLotInput, cureLotInput, moveLotInput, takeBackLotInput } from '@/lib/schemas/store/lot';
import { mutation, type WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { lotKept, placeKept } from './open-store';
import { readLotFacts } from './typed-lot';

// As a lot was before a change, it stays on record as a row that is retired; the book says that there was one.
function noteChange(context: WriteContext, verb: string, lot: LotRecord, keptId: string): void {
  context.note({ verb, thing: 'store lot', thingId: lot.id, forHoldingId: lot.holdingId, before: { keptId } });
}

/** Correct what was written of a lot. What its goings over rest on stands while there are any. */
export const correctLot = mutation({
  name: 'correct-lot',
  allow: canEnter,
  input: correctLotInput,
  write: async (context, { lotId, ...typed }) => {
    const lot = await lotKept(context, lotId);
    const facts = readLotFacts(typed, context);
    const count = lot.goingsOver.length;
    const field = count > 0 ? movedField(lot, facts) : undefined;
    if (field) refuse('gone-over-already', { field, numbers: { count } });
    if (lot.curedOn && facts.curingFrom && facts.curingFrom > lot.curedOn)
      refuse('cured-before-laid-out', { field: 'curingFrom', numbers: { on: facts.curingFrom } });
    const keptId = await changeLotRow(context.tx, context.scope, lotId, facts, context.now);
    noteChange(context, 'corrected', lot, keptId);
    return { lotId };
  },
});

function movedField(lot: LotRecord, facts: LotFacts): string | undefined {
  if (facts.keepingKey !== lot.keepingKey) return 'keepingKey';
  if (facts.measure !== lot.measure) return 'measure';
  if (facts.putIn !== lot.putIn) return 'amount';
  return facts.putInOn === lot.putInOn ? undefined : 'putInOn';
}

/** Move a lot to another place of the same holding. */
export const moveLot = mutation({
  name: 'move-lot',
  allow: canEnter,
  input: moveLotInput,
  write: async (context, { lotId, placeId }) => {
    const lot = await lotKept(context, lotId);
    const place = await placeKept(context, placeId);
    if (place.holdingId !== lot.holdingId) throw new NotFound();
    if (placeId === lot.placeId) return { lotId, placeId };
    const keptId = await changeLotRow(context.tx, context.scope, lotId, { placeId }, context.now);
    noteChange(context, 'moved', lot, keptId);
    return { lotId, placeId };
  },
});

/** Say that a lot's curing is done. */
export const cureLot = mutation({
  name: 'cure-lot',
  allow: canEnter,
  input: cureLotInput,
  write: async (context, { lotId, curedOn }) => {
    const { tx, scope, today, now } = context;
    const lot = await lotKept(context, lotId);
    if (lot.curingFrom === null) refuse('not-laid-out');
    if (lot.curedOn !== null) refuse('already-cured');
    if (curedOn > today) refuse('cured-in-future', { field: 'curedOn' });
    if (curedOn < lot.curingFrom)
      refuse('cured-before-laid-out', { field: 'curedOn', numbers: { on: lot.curingFrom } });
    noteChange(context, 'cured', lot, await changeLotRow(tx, scope, lotId, { curedOn }, now));
    return { lotId };
  },
});

/** Take a lot back, as a mistake. It stays on record, and counts no more. */
export const takeBackLot = mutation({
  name: 'take-back-lot',
  allow: canEnter,
  input: takeBackLotInput,
  write: async (context, { lotId }) => {
    const { holdingId } = await lotKept(context, lotId);
    await retireLotRow(context.tx, context.scope, lotId, context.now);
    context.note({ verb: 'taken back', thing: 'store lot', thingId: lotId, forHoldingId: holdingId });
    return { lotId };
  },
});
