import type { readDelivery } from '@/lib/usecases/deliveries/read-deliveries';

/** A delivery as its page reads it. */
export type Read = Awaited<ReturnType<typeof readDelivery.run>>;
