import { bookLoads, offerToUnload, typeInBookings, withdrawBooking } from '@/lib/usecases/deliveries/book-loads';
import { enterBeyond, giveUp, tickOff, undoTick } from '@/lib/usecases/deliveries/collect';
import {
  callOffDelivery,
  changeDelivery,
  closeDelivery,
  openDelivery,
  planDelivery,
  postponeDelivery,
} from '@/lib/usecases/deliveries/plan-delivery';
import { readCollecting } from '@/lib/usecases/deliveries/read-collecting';
import {
  listDeliveries,
  readCredits,
  readDelivery,
  readGateList,
  readQueue,
} from '@/lib/usecases/deliveries/read-deliveries';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap, previewShareOut } from '@/lib/usecases/deliveries/share-out';
import { deliveryFacts, once } from '../../fixtures/society';
import type { Row } from '../deny';

const others = ['neighbour', 'treasurer', 'gate_helper'] as const;
const all = ['member', ...others] as const;

export const deliveries: readonly Row[] = [
  { operation: listDeliveries, input: () => ({}), deny: [] },
  { operation: readDelivery, input: ({ deliveryId }) => ({ deliveryId }), deny: [] },
  { operation: readQueue, input: ({ sharedId }) => ({ deliveryId: sharedId }), deny: [] },
  { operation: readCredits, input: () => ({}), deny: [] },
  { operation: readCollecting, input: ({ sharedId }) => ({ deliveryId: sharedId }), deny: [] },
  { operation: readGateList, input: ({ deliveryId }) => ({ deliveryId }), deny: ['member', 'neighbour', 'treasurer'] },
  { operation: planDelivery, input: () => once(deliveryFacts()), deny: all },
  { operation: changeDelivery, input: ({ deliveryId }) => once({ deliveryId, ...deliveryFacts() }), deny: all },
  { operation: openDelivery, input: ({ deliveryId }) => once({ deliveryId }), deny: all },
  { operation: closeDelivery, input: ({ deliveryId }) => once({ deliveryId }), deny: all },
  {
    operation: postponeDelivery,
    input: ({ deliveryId }) => {
      const { arrivesOn, collectByOn, closesAt } = deliveryFacts();
      return once({ deliveryId, arrivesOn, collectByOn, closesAt });
    },
    deny: all,
  },
  { operation: callOffDelivery, input: ({ deliveryId }) => once({ deliveryId, sure: 'yes' }), deny: all },
  {
    operation: bookLoads,
    input: ({ deliveryId, holdingId }) => once({ deliveryId, holdingId, asked: '2', beds: [] }),
    deny: others,
  },
  { operation: withdrawBooking, input: ({ deliveryId, holdingId }) => once({ deliveryId, holdingId }), deny: others },
  {
    operation: typeInBookings,
    input: ({ deliveryId, holdingId }) => once({ deliveryId, rows: [{ holdingId, asked: '2' }] }),
    deny: all,
  },
  { operation: offerToUnload, input: ({ deliveryId }) => once({ deliveryId, offers: 'yes' }), deny: [] },
  { operation: measureHeap, input: ({ sharedId }) => once({ deliveryId: sharedId, loads: '9' }), deny: all },
  { operation: previewShareOut, input: ({ sharedId }) => once({ deliveryId: sharedId }), deny: all },
  { operation: confirmShareOut, input: ({ sharedId }) => once({ deliveryId: sharedId }), deny: all },
  {
    operation: tickOff,
    input: ({ sharedId, bookingId }) => once({ deliveryId: sharedId, bookingId, loads: '1' }),
    deny: ['neighbour', 'treasurer'],
  },
  {
    operation: undoTick,
    input: ({ sharedId, bookingId }) => once({ deliveryId: sharedId, bookingId }),
    deny: ['neighbour', 'treasurer'],
  },
  {
    operation: giveUp,
    input: ({ sharedId, bookingId }) => once({ deliveryId: sharedId, bookingId }),
    deny: ['neighbour', 'treasurer'],
  },
  {
    operation: enterBeyond,
    input: ({ sharedId, bookingId }) => once({ deliveryId: sharedId, bookingId, loads: '1', reason: 'r' }),
    deny: all,
  },
  { operation: settleDelivery, input: ({ sharedId }) => once({ deliveryId: sharedId }), deny: all },
];
