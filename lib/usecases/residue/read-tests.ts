import 'server-only';
import { z } from 'zod';
import { residueTestsOf } from '@/lib/data/residue-test';
import { mayTake } from '@/lib/domain/delivery/steps';
import { canEnter, canRunSociety } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { deliverySeen, testSeen } from './open-test';
import { shownTest } from './shown-test';

/** The viewer's own tests of their own manure. */
export const readOwnTests = query({
  name: 'read-own-residue-tests',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope, today }) => {
    const tests = await residueTestsOf(db, scope, 'own');
    return { today, tests: tests.map((test) => shownTest(scope, test, today)) };
  },
});

/** The tests of a delivery, for every member: words, pots and days. */
export const readDeliveryTests = query({
  name: 'read-delivery-residue-tests',
  allow: canEnter,
  input: z.object({ deliveryId: z.uuid() }),
  read: async (context, { deliveryId }) => {
    const { db, scope, today } = context;
    const { name, state, held } = await deliverySeen(context, deliveryId);
    const tests = await residueTestsOf(db, scope, { deliveryId });
    return {
      today,
      delivery: { id: deliveryId, name, state, held },
      tests: tests.map((test) => shownTest(scope, test, today)),
    };
  },
});

/** One test: what to do next, and what it shows. */
export const readTest = query({
  name: 'read-residue-test',
  allow: canEnter,
  input: z.object({ testId: z.uuid() }),
  read: async (context, { testId }) => {
    const { scope, today } = context;
    const { test, delivery } = await testSeen(context, testId);
    return {
      today,
      test: shownTest(scope, test, today),
      delivery: delivery && { id: delivery.id, name: delivery.name, state: delivery.state, held: delivery.held },
      /** Whether the viewer could hold the heap now. */
      mayHold: delivery !== null && canRunSociety(scope) && !delivery.held && mayTake('hold', delivery.state),
    };
  },
});
