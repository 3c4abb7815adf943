import { bookLate, leaveWaitingList } from '@/lib/usecases/deliveries/book-late';
import {
  changeStanding,
  endStanding,
  readStandingBookings,
  startStanding,
} from '@/lib/usecases/deliveries/standing-bookings';
import { once } from '../../fixtures/society';
import { everybody, keepers, type Row } from '../row';

const autumn = { when: 'autumn', mostLoads: '' };

export const waiting: readonly Row[] = [
  {
    operation: bookLate,
    input: ({ waitingId, holdingId, bedId }) => once({ deliveryId: waitingId, holdingId, asked: '2', beds: [bedId] }),
    allow: keepers,
  },
  {
    operation: leaveWaitingList,
    input: ({ waitingId, holdingId }) => once({ deliveryId: waitingId, holdingId }),
    allow: keepers,
  },
  { operation: readStandingBookings, input: () => ({}), allow: everybody },
  {
    operation: startStanding,
    input: ({ holdingId }) => once({ holdingId, serves: 'straw', ...autumn }),
    allow: keepers,
  },
  { operation: changeStanding, input: ({ standingId }) => once({ standingId, ...autumn }), allow: keepers },
  { operation: endStanding, input: ({ standingId }) => once({ standingId }), allow: keepers },
];
