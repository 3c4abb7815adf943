import { keepingOf } from '@/lib/domain/catalogue/keepings';
import type { Dated } from '@/lib/domain/reminders/dated';

type Told = { readonly title: string; readonly note: string; readonly path: string };

/** The dated things of a store in words: what it is, why, and where it is done. */
export const storeDated: Record<string, (facts: Dated['facts']) => Told> = {
  'store-round': ({ place, lots }) => ({
    title: `Go over the store: ${place}`,
    note: `${lots} ${lots === 1 ? 'lot is' : 'lots are'} due: take out what is bad, and say what was used.`,
    path: '/store/round',
  }),
  'store-cured': ({ keepingKey, place, lotId }) => ({
    title: `Curing is done: ${(keepingOf(String(keepingKey))?.name ?? '').toLowerCase()}`,
    note: `Put away what was laid out to cure (${place}) in these days.`,
    path: `/store/lots/${lotId}`,
  }),
};
