type Facts = Readonly<Record<string, string | number | null>>;

/** Words for the dated things of seed. */
export const seedDated: Record<string, (facts: Facts) => { title: string; note: string; path: string }> = {
  'seed-closes': ({ orderId, name }) => ({
    title: `Seed list closes: ${name}`,
    note: 'The last day to put down or change what seed you want of it.',
    path: `/seed/orders/${orderId}`,
  }),
};
