import type { readOfficeSeedOrder } from '@/lib/usecases/seed/read-office-order';

export type Read = Awaited<ReturnType<typeof readOfficeSeedOrder.run>>;
export type OrderProps = { readonly society: string; readonly read: Read };
