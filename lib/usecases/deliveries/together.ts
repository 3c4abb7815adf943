import 'server-only';
import { comingTogether, letComeTogether, lockTogether } from '@/lib/data/delivery-together';
import type { DeliveryFacts, DeliveryRecord } from '@/lib/data/delivery';
import { type DeliveryStep, isComing, mayTake } from '@/lib/domain/delivery/steps';
import { canSeeDelivery } from '@/lib/domain/policy/delivery';
import type { WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { countOf } from './count-of';
import { takeStep } from './open-delivery';

/**
 * All that comes on the lorry with a delivery, locked, for a step that concerns the lorry: all of them take it, or none.
 * One that has been opened or closed before, or that no longer comes, is passed over.
 */
export async function takeStepTogether(
  { tx, scope, now }: Pick<WriteContext, 'tx' | 'scope' | 'now'>,
  id: string,
  step: DeliveryStep & ('open' | 'close' | 'postpone' | 'call-off'),
): Promise<DeliveryRecord[]> {
  const group = await lockTogether(tx, scope, id, now);
  const one = group.find((delivery) => delivery.id === id);
  if (!one || !canSeeDelivery(scope, one)) throw new NotFound();
  if (!mayTake(step, one.state)) refuse('step-not-now', { numbers: { state: one.state } });
  const mayBePast = step === 'open' || step === 'close';
  const others = group.filter(
    (other) => other !== one && isComing(other.state) && !(mayBePast && !mayTake(step, other.state)),
  );
  const stuck = others.find(({ state }) => !mayTake(step, state));
  if (stuck) refuse('together-not-now', { numbers: { name: stuck.name, state: stuck.state } });
  return [one, ...others];
}

/** The delivery that another is to come with, locked: it must come on the same day, and not be closed yet. */
export async function firstOfLorry(context: WriteContext, id: string, facts: DeliveryFacts): Promise<DeliveryRecord> {
  const first = await takeStep(context, id, 'change');
  if (first.arrivesOn !== facts.arrivesOn)
    refuse('comes-another-day', { field: 'arrivesOn', numbers: { name: first.name, day: first.arrivesOn } });
  return first;
}

/** Put a delivery on the lorry of another. */
export async function comeWith({ tx, scope }: WriteContext, first: DeliveryRecord, id: string): Promise<void> {
  await letComeTogether(tx, scope, [first.id, id], first.togetherId ?? first.id);
}

/** One lorry comes on one day: what comes together is put off together. */
export async function checkSameDay(context: WriteContext, before: DeliveryRecord, facts: DeliveryFacts): Promise<void> {
  if (before.togetherId === null || before.arrivesOn === facts.arrivesOn) return;
  const { tx, scope, now } = context;
  const others = (await comingTogether(tx, scope, before.id, now)).filter(
    ({ id, state }) => id !== before.id && isComing(state),
  );
  const [other] = others;
  if (other) refuse('comes-another-day', { field: 'arrivesOn', numbers: { name: other.name, day: other.arrivesOn } });
}

type Named = Pick<DeliveryRecord, 'name' | 'expectedLoads' | 'loadUnit'>;

/** What comes, in one line: “Stable load”, about 180 loads, and “Straw”, about 40 bales. */
export function loadsComing(deliveries: readonly Named[]): string {
  return deliveries
    .map(({ name, expectedLoads, loadUnit }) => `“${name}”, about ${countOf(expectedLoads, loadUnit)}`)
    .join(', and ');
}

/** Their names in one line: “Stable load” and “Straw”. */
export function namesOf(deliveries: readonly Pick<DeliveryRecord, 'name'>[]): string {
  return deliveries.map(({ name }) => `“${name}”`).join(' and ');
}
