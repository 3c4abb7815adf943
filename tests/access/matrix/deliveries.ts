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
import { readCredits } from '@/lib/usecases/deliveries/read-credits';
import { listDeliveries, readDelivery, readGateList } from '@/lib/usecases/deliveries/read-deliveries';
import { readQueue, readQueueFile } from '@/lib/usecases/deliveries/read-queue';
import { settleDelivery } from '@/lib/usecases/deliveries/settle-delivery';
import { confirmShareOut, measureHeap, previewShareOut } from '@/lib/usecases/deliveries/share-out';
import { deliveryFacts, once } from '../../fixtures/society';
import { atTheHeap, everybody, gate, keepers, type Row, secretary } from '../row';

export const deliveries: readonly Row[] = [
  { operation: listDeliveries, input: () => ({}), allow: everybody },
  { operation: readDelivery, input: ({ openId }) => ({ deliveryId: openId }), allow: everybody },
  { operation: readQueue, input: ({ sharedId }) => ({ deliveryId: sharedId }), allow: everybody },
  { operation: readQueueFile, input: ({ sharedId }) => ({ deliveryId: sharedId }), allow: everybody },
  { operation: readCredits, input: () => ({}), allow: everybody },
  { operation: readCollecting, input: ({ sharedId }) => ({ deliveryId: sharedId }), allow: everybody },
  { operation: readGateList, input: ({ openId }) => ({ deliveryId: openId }), allow: gate },
  { operation: planDelivery, input: () => once(deliveryFacts()), allow: secretary },
  {
    operation: changeDelivery,
    input: ({ plannedId }) => once({ deliveryId: plannedId, ...deliveryFacts() }),
    allow: secretary,
  },
  { operation: openDelivery, input: ({ plannedId }) => once({ deliveryId: plannedId }), allow: secretary },
  { operation: closeDelivery, input: ({ openId }) => once({ deliveryId: openId }), allow: secretary },
  {
    operation: postponeDelivery,
    input: ({ openId }) => {
      const { arrivesOn, collectByOn, closesAt } = deliveryFacts();
      return once({ deliveryId: openId, arrivesOn, collectByOn, closesAt });
    },
    allow: secretary,
  },
  { operation: callOffDelivery, input: ({ openId }) => once({ deliveryId: openId, sure: 'yes' }), allow: secretary },
  {
    operation: bookLoads,
    input: ({ openId, holdingId, bedId }) => once({ deliveryId: openId, holdingId, asked: '2', beds: [bedId] }),
    allow: keepers,
  },
  {
    operation: withdrawBooking,
    input: ({ openId, holdingId }) => once({ deliveryId: openId, holdingId }),
    allow: keepers,
  },
  {
    operation: typeInBookings,
    input: ({ openId, holdingId }) => once({ deliveryId: openId, rows: [{ holdingId, asked: '2' }] }),
    allow: secretary,
  },
  { operation: offerToUnload, input: ({ openId }) => once({ deliveryId: openId, offers: 'yes' }), allow: everybody },
  { operation: measureHeap, input: ({ closedId }) => once({ deliveryId: closedId, loads: '9' }), allow: secretary },
  { operation: previewShareOut, input: ({ closedId }) => once({ deliveryId: closedId }), allow: secretary },
  { operation: confirmShareOut, input: ({ tippedId }) => once({ deliveryId: tippedId }), allow: secretary },
  {
    operation: tickOff,
    input: ({ sharedId, bookingId }) => once({ deliveryId: sharedId, bookingId, loads: '1' }),
    allow: atTheHeap,
  },
  {
    operation: undoTick,
    input: ({ sharedId, bookingId }) => once({ deliveryId: sharedId, bookingId }),
    allow: atTheHeap,
  },
  {
    operation: giveUp,
    input: ({ sharedId, bookingId }) => once({ deliveryId: sharedId, bookingId }),
    allow: atTheHeap,
  },
  {
    operation: enterBeyond,
    input: ({ sharedId, bookingId }) => once({ deliveryId: sharedId, bookingId, loads: '1', reason: 'r' }),
    allow: secretary,
  },
  { operation: settleDelivery, input: ({ collectedId }) => once({ deliveryId: collectedId }), allow: secretary },
];
