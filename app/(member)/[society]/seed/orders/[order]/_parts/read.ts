import type { readSeedOrder } from '@/lib/usecases/seed/read-orders';

export type Read = Awaited<ReturnType<typeof readSeedOrder.run>>;

export type ClaimProps = {
  readonly society: string;
  readonly order: Read['order'];
  readonly items: Read['items'];
  readonly claim: Read['claims'][number];
};
