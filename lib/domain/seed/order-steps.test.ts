import { describe, expect, it } from 'vitest';
import { mayTakeStep, seedOrderStateAt, seedOrderStates } from './order-steps';

describe('an order of seed', () => {
  it('closes by itself at its instant, and nothing else does', () => {
    expect(seedOrderStateAt('open', 1000, 999)).toBe('open');
    expect(seedOrderStateAt('open', 1000, 1000)).toBe('closed');
    for (const state of seedOrderStates) if (state !== 'open') expect(seedOrderStateAt(state, 1000, 2000)).toBe(state);
  });

  it.each([
    ['want', ['open']],
    ['close', ['open']],
    ['order', ['closed']],
    ['settle', ['arrived']],
    ['hand-out', ['arrived', 'settled']],
    ['call-off', ['planned', 'open', 'closed', 'ordered']],
  ] as const)('takes the step “%s” in %j', (step, states) =>
    expect(seedOrderStates.filter((state) => mayTakeStep(step, state))).toEqual(states),
  );
});
