import type { Words } from './shape';
import type { DeliveriesRefusal } from '@/lib/usecases/refusals/deliveries';

export const deliveriesWords: Words<DeliveriesRefusal> = {
  'not-yet': () => 'That cannot be done yet.',
};
