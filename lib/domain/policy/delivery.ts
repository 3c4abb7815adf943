import type { DeliveryState } from '../delivery/steps';
import { canRunSociety, canTickOffForOthers, type Standing } from './standing';

/** Whether a delivery is there for the viewer: one that is only planned is the secretary's own affair. */
export function canSeeDelivery(viewer: Standing, { state }: { readonly state: DeliveryState }): boolean {
  return state !== 'planned' || canRunSociety(viewer);
}

/** Whether the viewer says how much is left on a heap: whoever collects from it while it is collected, the secretary always. */
export function canLookAtHeap(
  viewer: Standing,
  { state, holdsShare }: { readonly state: DeliveryState; readonly holdsShare: boolean },
): boolean {
  if (canRunSociety(viewer)) return true;
  return ['shared', 'collecting'].includes(state) && (holdsShare || canTickOffForOthers(viewer));
}

/** Minutes within which a tick can be undone by whoever may tick. */
export const undoMinutes = 10;

/**
 * Whether the viewer may undo a tick: within ten minutes whoever may tick, the secretary at any time; loads beyond a share
 * were entered by the secretary, and are undone by the secretary.
 *
 * @param atMs, nowMs  instants [ms]
 */
export function canUndoTick(
  viewer: Standing,
  tick: { readonly beyond: boolean; readonly atMs: number },
  nowMs: number,
): boolean {
  return canRunSociety(viewer) || (!tick.beyond && nowMs - tick.atMs <= undoMinutes * 60_000);
}
