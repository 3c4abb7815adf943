import { loadsWords } from '@/app/_ui/delivery-words';
import type { DatedTable } from './dated-shape';

export const deliveriesDated: DatedTable = {
  'booking-closes': ({ name, deliveryId }) => ({
    title: `Booking closes: ${name}`,
    note: 'Say how much you want before it closes.',
    path: `/deliveries/${deliveryId}`,
  }),
  'delivery-comes': ({ name, deliveryId }) => ({
    title: `Comes: ${name}`,
    note: 'It is measured and shared out before anybody takes of it.',
    path: `/deliveries/${deliveryId}`,
  }),
  'collect-by': ({ name, deliveryId, loads, loadUnit }) => ({
    title: `Last day to collect: ${loadsWords(Number(loads), loadUnit === 'bale' ? 'bale' : 'barrow')} of ${name}`,
    note: 'What you do not want you can give up there.',
    path: `/deliveries/${deliveryId}/collect`,
  }),
};
