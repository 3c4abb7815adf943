/** Where a society's order of seed stands. */
export const seedOrderStates = ['planned', 'open', 'closed', 'ordered', 'arrived', 'settled', 'called-off'] as const;
export type SeedOrderState = (typeof seedOrderStates)[number];

const steps = {
  /** Name, closing, notes; after closing a later closing opens it again. */
  change: ['planned', 'open', 'closed'],
  list: ['planned', 'open'],
  open: ['planned'],
  want: ['open'],
  close: ['open'],
  order: ['closed'],
  arrive: ['ordered', 'arrived'],
  'hand-out': ['arrived', 'settled'],
  settle: ['arrived'],
  correct: ['settled'],
  'call-off': ['planned', 'open', 'closed', 'ordered'],
} as const satisfies Record<string, readonly SeedOrderState[]>;

export type SeedOrderStep = keyof typeof steps;

/**
 * Whether a step may be taken of an order of seed in a state.
 *
 * @example mayTakeStep('want', 'closed') → false
 */
export function mayTakeStep(step: SeedOrderStep, state: SeedOrderState): boolean {
  return steps[step].some((one) => one === state);
}

/**
 * The state of an order at an instant: lists close by themselves at the closing time.
 *
 * @param closesAtMs, nowMs  instants [ms]
 * @example seedOrderStateAt('open', 1000, 1000) → 'closed'
 */
export function seedOrderStateAt(state: SeedOrderState, closesAtMs: number, nowMs: number): SeedOrderState {
  return state === 'open' && nowMs >= closesAtMs ? 'closed' : state;
}
