import 'server-only';
import type { z } from 'zod';
import { createSeedOrder, moveSeedOrder, type SeedOrderFacts, type SeedOrderRecord } from '@/lib/data/seed-order';
import { canKeepMoney } from '@/lib/domain/policy/money';
import { wallIn } from '@/lib/platform/clock';
import {
  callOffSeedOrderInput,
  changeSeedOrderInput,
  planSeedOrderInput,
  seedOrderInput,
} from '@/lib/schemas/seed/order';
import { closingAt } from '../closing-at';
import { everyMemberId } from '../deliveries/recipients';
import { mutation, type WriteContext } from '../operation';
import { refuse } from '../refusal';
import { tell } from '../tell';
import { takeSeedStep } from './open-order';

const thing = 'seed order';

type Typed = Omit<z.output<typeof planSeedOrderInput>, 'writeId'>;

function factsOf({ scope, now }: WriteContext, { closesAt: wall, ...facts }: Typed): SeedOrderFacts {
  const closesAt = closingAt(scope.timeZone, wall);
  if (closesAt <= now) refuse('closing-in-the-past', { field: 'closesAt' });
  return { ...facts, closesAt };
}

const shownAt = ({ scope }: WriteContext, instant: Date) => wallIn(scope.timeZone, instant).replace('T', ' ');

/** Plan an order of seed: its name, when lists close, and where it is ordered. Members see it once it is opened. */
export const planSeedOrder = mutation({
  name: 'plan-seed-order',
  allow: canKeepMoney,
  input: planSeedOrderInput,
  write: async (context, { writeId: _, ...typed }) => {
    const facts = factsOf(context, typed);
    const orderId = await createSeedOrder(context.tx, context.scope, facts);
    context.note({ verb: 'planned', thing, thingId: orderId, after: { closesAt: facts.closesAt.toISOString() } });
    return { orderId };
  },
});

/** Change what an order says. Lists that have closed are opened again by a later closing. */
export const changeSeedOrder = mutation({
  name: 'change-seed-order',
  allow: canKeepMoney,
  input: changeSeedOrderInput,
  write: async (context, { writeId: _, orderId, ...typed }) => {
    const before = await takeSeedStep(context, orderId, 'change');
    const facts = factsOf(context, typed);
    const state = before.state === 'planned' ? before.state : 'open';
    await moveSeedOrder(context.tx, context.scope, orderId, { ...facts, state });
    context.note({
      verb: 'changed',
      thing,
      thingId: orderId,
      before: { closesAt: before.closesAt.toISOString() },
      after: { closesAt: facts.closesAt.toISOString() },
    });
    await tellMoved(context, before, facts);
    return { orderId };
  },
});

async function tellMoved(context: WriteContext, before: SeedOrderRecord, { name, closesAt }: SeedOrderFacts) {
  if (before.state === 'planned' || closesAt.getTime() === before.closesAt.getTime()) return;
  const body = `Lists for “${name}” now close at ${shownAt(context, closesAt)}. What you put down stands; you can change it until then.`;
  await tell(
    context,
    await everyMemberId(context.tx, context.scope, context.today),
    `${name}: another closing time`,
    body,
  );
}

/** Open an order, once something is on its list: every member is told. */
export const openSeedOrder = mutation({
  name: 'open-seed-order',
  allow: canKeepMoney,
  input: seedOrderInput,
  write: async (context, { orderId }) => {
    const { tx, scope, today, now, note } = context;
    const { name, closesAt, items } = await takeSeedStep(context, orderId, 'open');
    if (items.length === 0) refuse('nothing-listed');
    if (closesAt <= now) refuse('closing-in-the-past');
    await moveSeedOrder(tx, scope, orderId, { state: 'open' });
    note({ verb: 'opened', thing, thingId: orderId, after: { items: items.length } });
    const body = `Put down what seed you want until ${shownAt(context, closesAt)}. Sign in and open “Seed”: it works out what your plan needs, less what your tin holds.`;
    await tell(context, await everyMemberId(tx, scope, today), `${name} is open`, body);
    return { orderId };
  },
});

/** Close the lists before their time. */
export const closeSeedOrder = mutation({
  name: 'close-seed-order',
  allow: canKeepMoney,
  input: seedOrderInput,
  write: async (context, { orderId }) => {
    const { tx, scope, now, note } = context;
    await takeSeedStep(context, orderId, 'close');
    await moveSeedOrder(tx, scope, orderId, { state: 'closed', closesAt: now });
    note({ verb: 'closed', thing, thingId: orderId });
    return { orderId };
  },
});

/** Call an order off before anything came: nobody owes anything, and everybody who knows of it is told. */
export const callOffSeedOrder = mutation({
  name: 'call-off-seed-order',
  allow: canKeepMoney,
  input: callOffSeedOrderInput,
  write: async (context, { orderId }) => {
    const { tx, scope, today, now, note } = context;
    const { name, state } = await takeSeedStep(context, orderId, 'call-off');
    await moveSeedOrder(tx, scope, orderId, { state: 'called-off', calledOffAt: now });
    note({ verb: 'called off', thing, thingId: orderId, before: { state } });
    if (state !== 'planned')
      await tell(
        context,
        await everyMemberId(tx, scope, today),
        `${name} is called off`,
        `“${name}” is not ordered. Nobody owes anything for it.`,
      );
    return { orderId };
  },
});
