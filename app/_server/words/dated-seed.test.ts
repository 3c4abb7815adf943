import { expect, it } from 'vitest';
import { seedDated } from './dated-seed';

it('says when a list closes, and where to put it down', () => {
  expect(seedDated['seed-closes']?.({ orderId: 'o1', name: 'Seed for 2027' })).toEqual({
    title: 'Seed list closes: Seed for 2027',
    note: 'The last day to put down or change what seed you want of it.',
    path: '/seed/orders/o1',
  });
});
