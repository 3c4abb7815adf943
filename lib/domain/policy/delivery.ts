import type { DeliveryState } from '../delivery/steps';
import { canRunSociety, type Standing } from './standing';

/** Whether a delivery is there for the viewer: one that is only planned is the secretary's own affair. */
export function canSeeDelivery(viewer: Standing, { state }: { readonly state: DeliveryState }): boolean {
  return state !== 'planned' || canRunSociety(viewer);
}
