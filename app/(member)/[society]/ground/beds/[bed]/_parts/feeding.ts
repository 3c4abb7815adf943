import type { readFeeding } from '@/lib/usecases/ground/read-feeding';

/** What feeds a bed, as it was read. */
export type Feeding = Awaited<ReturnType<typeof readFeeding.run>>;
