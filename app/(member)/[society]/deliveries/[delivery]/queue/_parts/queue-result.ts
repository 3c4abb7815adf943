import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import type { readQueue } from '@/lib/usecases/deliveries/read-queue';

/** What the parts of the queue's page are made from. */
export type QueueResult = NonNullable<Awaited<ReturnType<typeof readQueue.run>>['result']>;

export type QueueLine = QueueResult['lines'][number];

/** Props of every part: the result, the load's unit, and what each claim's holding is called. */
export type QueueProps = {
  readonly result: QueueResult;
  readonly unit: LoadUnit;
  readonly nameOf: (bookingId: string) => string;
};
