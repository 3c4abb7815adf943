import { holdDelivery, releaseDelivery } from '@/lib/usecases/deliveries/hold-delivery';
import { endTest, sowTest, startTest, takeBackTest } from '@/lib/usecases/residue/keep-tests';
import { readDeliveryTests, readOwnTests, readTest } from '@/lib/usecases/residue/read-tests';
import { recordReading } from '@/lib/usecases/residue/record-reading';
import { once } from '../../fixtures/society';
import { everybody, keepers, type Row, secretary } from '../row';

const pots = { name: 'n', manureParts: '1', mixParts: '1', testPots: '3', controlPots: '3', seedsAPot: '3' };
const line = { potId: 'manure-1', up: '3', distorted: '0', trueLeaves: '1' };

export const residue: readonly Row[] = [
  { operation: readOwnTests, input: () => ({}), allow: everybody },
  { operation: readDeliveryTests, input: ({ openId }) => ({ deliveryId: openId }), allow: everybody },
  { operation: readTest, input: ({ testId }) => ({ testId }), allow: everybody },
  { operation: startTest, input: ({ openId }) => once({ ...pots, deliveryId: openId }), allow: everybody },
  { operation: sowTest, input: ({ testId }) => once({ testId, sownOn: '2025-01-07' }), allow: keepers },
  {
    operation: recordReading,
    input: ({ testId }) => once({ testId, on: '2025-01-13', pots: [line] }),
    allow: keepers,
  },
  { operation: endTest, input: ({ testId }) => once({ testId }), allow: keepers },
  { operation: takeBackTest, input: ({ testId }) => once({ testId, sure: 'yes' }), allow: keepers },
  { operation: holdDelivery, input: ({ openId }) => once({ deliveryId: openId, reason: 'r' }), allow: secretary },
  {
    operation: releaseDelivery,
    input: ({ closedId }) => once({ deliveryId: closedId, reason: 'r' }),
    allow: secretary,
  },
];
