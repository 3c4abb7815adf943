import type { Words } from '@/app/_server/words';
import type { DeliveriesRefusal } from '@/lib/usecases/refusals/deliveries';

export const deliveriesWords: Words<DeliveriesRefusal> = {
  'not-yet': () => 'That cannot be done yet.',
};
