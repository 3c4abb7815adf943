import type { DatedTable } from './dated-shape';

export const seedDated: DatedTable = {
  'seed-closes': ({ orderId, name }) => ({
    title: `Seed list closes: ${name}`,
    note: 'The last day to put down or change what seed you want of it.',
    path: `/seed/orders/${orderId}`,
  }),
};
