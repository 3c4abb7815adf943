import type { readHeapPlacing } from '@/lib/usecases/site/read-heap-placing';

/** What was worked out for a site that is there. */
export type Placed = Extract<Awaited<ReturnType<typeof readHeapPlacing.run>>, { plan: unknown }>;
