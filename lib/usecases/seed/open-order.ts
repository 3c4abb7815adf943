import 'server-only';
import { holdingsOn } from '@/lib/data/holding';
import { lockSeedOrder, type SeedOrderRecord } from '@/lib/data/seed-order';
import { seedWantsOf } from '@/lib/data/seed-want';
import { canKeepMoney } from '@/lib/domain/policy/money';
import type { Standing } from '@/lib/domain/policy/standing';
import { mayTakeStep, type SeedOrderStep } from '@/lib/domain/seed/order-steps';
import type { WriteContext } from '../operation';
import { NotFound, refuse } from '../refusal';
import { tell } from '../tell';

/** Whether an order is there for the viewer: one that is only planned is there for those who keep it. */
export function canSeeSeedOrder(viewer: Standing, { state }: Pick<SeedOrderRecord, 'state'>): boolean {
  return state !== 'planned' || canKeepMoney(viewer);
}

/** An order, locked alone, on which a step may be taken now; refused where it may not. */
export async function takeSeedStep(
  { tx, scope, now }: WriteContext,
  orderId: string,
  step: SeedOrderStep,
): Promise<SeedOrderRecord> {
  const order = await lockSeedOrder(tx, scope, orderId, now, 'alone');
  if (!order || !canSeeSeedOrder(scope, order)) throw new NotFound();
  if (!mayTakeStep(step, order.state)) refuse('order-not-now', { numbers: { state: order.state } });
  return order;
}

/** Tell the holders who want something of an order, where they can be mailed. */
export async function tellWanting(
  context: WriteContext,
  orderId: string,
  subject: string,
  body: string,
): Promise<void> {
  const { tx, scope, today } = context;
  const wanting = new Set((await seedWantsOf(tx, scope, [orderId])).map(({ holdingId }) => holdingId));
  const holdings = (await holdingsOn(tx, scope, today)).filter(({ id }) => wanting.has(id));
  const memberIds = holdings.flatMap((holding) => holding.memberIds);
  await tell(context, memberIds, subject, body);
}
