import 'server-only';
import {
  closeResidueTest,
  createResidueTest,
  type ResidueTestRecord,
  saveResidueRecord,
} from '@/lib/data/residue-test';
import type { BioassayPot } from '@/lib/domain/bioassay/record';
import { recordThatStands } from '@/lib/domain/bioassay/kept-record';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canEnter } from '@/lib/domain/policy/standing';
import { endTestInput, sowTestInput, startTestInput, takeBackTestInput } from '@/lib/schemas/residue/test';
import { mutation, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { deliverySeen, testKept } from './open-test';

type Reply = { readonly testId: string; readonly deliveryId: string | null };

/** Start a test: of a delivery, which all members then see, or of one's own manure. */
export const startTest = mutation({
  name: 'start-residue-test',
  allow: canEnter,
  input: startTestInput,
  write: async (context, input): Promise<Reply> => {
    const { tx, scope, now, today, note } = context;
    const { deliveryId, name, manureParts, mixParts, testPots, controlPots, seedsAPot, sownOn } = input;
    if (deliveryId !== null) {
      const { state } = await deliverySeen({ db: tx, scope, now }, deliveryId);
      if (state === 'called_off') refuse('step-not-now', { numbers: { state } });
    }
    checkSown(sownOn, today);
    const pots = [...potsOf('test', testPots, seedsAPot), ...potsOf('control', controlPots, seedsAPot)];
    const kept = { sownOn, manureParts, mixParts, pots, entered: [] };
    const testId = await createResidueTest(tx, scope, { deliveryId, name, kept });
    const after = { deliveryId, sownOn, manureParts, mixParts, testPots, controlPots, seedsAPot };
    note({ verb: 'started', thing: 'residue test', thingId: testId, after });
    return { testId, deliveryId };
  },
});

// Numbered as they stand on the bench; the page names them by their kind.
function potsOf(kind: BioassayPot['kind'], count: number, seeds: number): BioassayPot[] {
  const word = kind === 'test' ? 'manure' : 'plain';
  return Array.from({ length: count }, (_, at) => ({ id: `${word}-${at + 1}`, kind, seeds }));
}

function checkSown(sownOn: CalendarDate | null, today: CalendarDate): void {
  if (sownOn !== null && sownOn > today) refuse('sown-in-the-future', { field: 'sownOn' });
}

/** Say when a test was sown, or say it anew while nothing is read. */
export const sowTest = mutation({
  name: 'sow-residue-test',
  allow: canEnter,
  input: sowTestInput,
  write: async (context, { testId, sownOn }): Promise<Reply> => {
    const { tx, scope, now, today, note } = context;
    const test = await testKept(context, testId);
    refuseEnded(test);
    checkSown(sownOn, today);
    if (recordThatStands(test.kept).readings.length) refuse('sown-and-read', { field: 'sownOn' });
    await saveResidueRecord(tx, scope, testId, { ...test.kept, sownOn }, now);
    const before = { sownOn: test.kept.sownOn };
    note({ verb: 'sown', thing: 'residue test', thingId: testId, before, after: { sownOn } });
    return reply(test);
  },
});

/** End a test: it is read no more, and what it showed stays. */
export const endTest = mutation({
  name: 'end-residue-test',
  allow: canEnter,
  input: endTestInput,
  write: async (context, { testId }): Promise<Reply> => {
    const test = await testKept(context, testId);
    refuseEnded(test);
    await closeResidueTest(context.tx, context.scope, testId, { endedAt: context.now });
    context.note({ verb: 'ended', thing: 'residue test', thingId: testId });
    return reply(test);
  },
});

/** Take a test back, as a mistake. What was entered stays on record. */
export const takeBackTest = mutation({
  name: 'take-back-residue-test',
  allow: canEnter,
  input: takeBackTestInput,
  write: async (context: WriteContext, { testId }): Promise<Reply> => {
    const test = await testKept(context, testId);
    await closeResidueTest(context.tx, context.scope, testId, { retiredAt: context.now });
    context.note({ verb: 'taken back', thing: 'residue test', thingId: testId });
    return reply(test);
  },
});

function refuseEnded({ endedAt }: ResidueTestRecord): void {
  if (endedAt !== null) refuse('test-ended');
}

function reply({ id, deliveryId }: ResidueTestRecord): Reply {
  return { testId: id, deliveryId };
}
