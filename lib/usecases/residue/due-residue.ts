import 'server-only';
import type { DeliveryRecord } from '@/lib/data/delivery';
import { residueTestsOf } from '@/lib/data/residue-test';
import { addDays, type CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { mayTake } from '@/lib/domain/delivery/steps';
import { canRunSociety } from '@/lib/domain/policy/standing';
import type { Dated } from '@/lib/domain/reminders/dated';
import type { ReadContext } from '../operation';
import { type ShownTest, shownTest } from './shown-test';

/** What wants doing about residues: pots to sow or to read, and a heap to decide about. */
export type ResidueDue =
  | {
      readonly code: 'pots';
      readonly testId: string;
      readonly deliveryId: string | null;
      readonly name: string;
      readonly next: 'sow' | 'read';
      readonly dueOn: CalendarDate | null;
      readonly lateDays: number;
    }
  | { readonly code: 'symptoms'; readonly deliveryId: string; readonly testId: string; readonly name: string }
  | {
      readonly code: 'held';
      readonly deliveryId: string;
      readonly name: string;
      readonly since: Date;
      readonly reason: string;
    };

/** Days ahead that a reading is announced. */
const aheadDays = 6;

/** What wants doing about residues, by the viewer: the secretary decides about heaps. */
export async function dueOfResidues(
  { db, scope, today }: ReadContext,
  deliveries: readonly DeliveryRecord[],
): Promise<ResidueDue[]> {
  const coming = new Map(deliveries.filter(({ state }) => state !== 'called_off').map((one) => [one.id, one]));
  const tests = await testsOf({ db, scope, today }, coming);
  const decisions = canRunSociety(scope) ? [...coming.values()].flatMap((one) => decisionOf(one, tests)) : [];
  return [
    ...decisions,
    ...tests.filter(({ keeps, isEnded }) => keeps && !isEnded).flatMap((test) => potsOf(test, today)),
  ];
}

async function testsOf(
  { db, scope, today }: Pick<ReadContext, 'db' | 'scope' | 'today'>,
  coming: ReadonlyMap<string, DeliveryRecord>,
): Promise<ShownTest[]> {
  return (await residueTestsOf(db, scope, 'own-and-deliveries'))
    .filter(({ deliveryId }) => deliveryId === null || coming.has(deliveryId))
    .map((test) => shownTest(scope, test, today));
}

function decisionOf({ id, name, state, held }: DeliveryRecord, tests: readonly ShownTest[]): ResidueDue[] {
  if (!mayTake('hold', state)) return [];
  if (held) return [{ code: 'held', deliveryId: id, name, ...held }];
  const shows = tests.find(({ deliveryId, judged }) => deliveryId === id && judged.verdict === 'symptoms');
  return shows ? [{ code: 'symptoms', deliveryId: id, testId: shows.id, name }] : [];
}

function potsOf({ id, deliveryId, name, state }: ShownTest, today: CalendarDate): ResidueDue[] {
  const { next, dueOn, lateDays } = state;
  if (next !== 'sow' && next !== 'read') return [];
  if (dueOn !== null && dueOn > addDays(today, aheadDays)) return [];
  return [{ code: 'pots', testId: id, deliveryId, name, next, dueOn, lateDays }];
}

/** The days on which pots are to be sown or read. */
export async function datesOfResidues(context: ReadContext, deliveries: readonly DeliveryRecord[]): Promise<Dated[]> {
  const coming = new Map(deliveries.filter(({ state }) => state !== 'called_off').map((one) => [one.id, one]));
  const tests = (await testsOf(context, coming)).filter(({ keeps, isEnded }) => keeps && !isEnded);
  return tests.flatMap(({ id, deliveryId, name, state: { next, dueOn } }): Dated[] =>
    dueOn && (next === 'sow' || next === 'read')
      ? [{ key: `pots ${id}`, code: 'pots', from: dueOn, to: dueOn, facts: { testId: id, deliveryId, name, next } }]
      : [],
  );
}
