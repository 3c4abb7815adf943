import { expect, test } from 'vitest';
import { canSeeLoadsByPlot } from './placing';
import type { Role } from './standing';

const seers = (basis: 'shares' | 'bookings' | 'need', lotIsOut: boolean) =>
  ([[], ['secretary'], ['treasurer'], ['chair'], ['gate_helper']] as const)
    .filter((roles: readonly Role[]) => canSeeLoadsByPlot({ memberId: 'm', roles }, { basis, lotIsOut }))
    .map(([role]) => role ?? 'member');
const all = ['member', 'secretary', 'treasurer', 'chair', 'gate_helper'];

test('who sees other people’s loads plot by plot', () => {
  expect(seers('shares', false)).toEqual(all);
  expect(seers('bookings', true)).toEqual(all);
  expect(seers('bookings', false)).toEqual(['secretary', 'gate_helper']);
  expect(seers('need', true)).toEqual(['secretary', 'treasurer', 'chair']);
});
