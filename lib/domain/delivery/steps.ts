/** How far a delivery has come. `closed` is also what an open one is once its closing time has passed. */
export type DeliveryState =
  | 'planned'
  | 'open'
  | 'closed'
  | 'tipped'
  | 'shared'
  | 'collecting'
  | 'settled'
  | 'called_off';

/** What can be done with a delivery. */
export type DeliveryStep =
  | 'change'
  | 'open'
  | 'book'
  | 'book-late'
  | 'close'
  | 'tip-at'
  | 'postpone'
  | 'call-off'
  | 'measure'
  | 'hold'
  | 'look'
  | 'preview'
  | 'confirm'
  | 'tick'
  | 'give-up'
  | 'settle';

const allowedIn: Readonly<Record<DeliveryStep, readonly DeliveryState[]>> = {
  change: ['planned', 'open'],
  open: ['planned'],
  book: ['open'],
  // For what is left over, as long as anything can be.
  'book-late': ['closed', 'tipped', 'shared', 'collecting'],
  close: ['open'],
  // Until it lies there.
  'tip-at': ['planned', 'open', 'closed'],
  // Before the first collection: bookings stand, credits are untouched.
  postpone: ['planned', 'open', 'closed', 'tipped', 'shared'],
  'call-off': ['planned', 'open', 'closed', 'tipped', 'shared'],
  // A heap that ran short is measured again while it is being collected.
  measure: ['closed', 'tipped', 'shared', 'collecting'],
  // Held, and released, before anything is shared: what was given out cannot be held back.
  hold: ['planned', 'open', 'closed', 'tipped'],
  // By eye, as long as anything lies there.
  look: ['tipped', 'shared', 'collecting', 'settled'],
  preview: ['closed', 'tipped'],
  confirm: ['tipped'],
  tick: ['shared', 'collecting'],
  'give-up': ['shared', 'collecting'],
  settle: ['shared', 'collecting'],
};

/** Whether a step may be taken in a state. */
export function mayTake(step: DeliveryStep, state: DeliveryState): boolean {
  return allowedIn[step].includes(state);
}

/**
 * The state in which a delivery really is: an open one is closed from the very instant of its closing time.
 *
 * @param closesAtMs, nowMs  instants [ms]
 * @example effectiveState('open', 1000, 1000) → 'closed'
 */
export function effectiveState(state: DeliveryState, closesAtMs: number, nowMs: number): DeliveryState {
  return state === 'open' && nowMs >= closesAtMs ? 'closed' : state;
}

/** Whether a delivery is still to come to its end: neither settled nor called off. */
export function isComing(state: DeliveryState): boolean {
  return state !== 'settled' && state !== 'called_off';
}
