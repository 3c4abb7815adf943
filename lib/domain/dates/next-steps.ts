import type { CalendarDate } from '../calendar/calendar-date';
import type { WayKey } from '../catalogue/windows';
import { type DatedPlanting, isSownInPlace, isToCome, waysOf } from './dated-planting';
import { type SowingState, sowingState } from './sowing-state';
import type { DatedWindow, Frosts } from './windows-of';

/** What is done next to a planting, when, and how that stands today. */
export type NextStep = DatedWindow & { readonly way: WayKey; readonly state: SowingState };

/**
 * What may be done next to a planting that is to be sown or planted: for each way that is still open, its sowing where that is not past,
 * else its planting, since plants may be had from elsewhere. Seed under cover or in a seedbed waits for its planting.
 *
 * @returns  whatever closes first comes first; none where it stands in its ground, or where the crop is not known
 * @throws RangeError as `windowsOf`
 * @source   the catalogue's windows
 * @example  onions planned for 2027, on 28 November 2026 → sow under cover 1 to 31 January, or plant sets 15 March to 15 April
 */
export function nextSteps(planting: DatedPlanting, frosts: Frosts, today: CalendarDate): NextStep[] {
  const toPlant = planting.sownOn !== null && !planting.plantedOn && !isSownInPlace(planting, frosts);
  if (!isToCome(planting) && !toPlant) return [];
  const steps = waysOf(planting, frosts, today).flatMap(({ way, windows }) => {
    const told = windows.map((window) => ({ ...window, way, state: sowingState(window, today) }));
    const plantings = told.filter(({ step }) => step === 'plant-out');
    if (toPlant) return plantings;
    const sowings = told.filter(({ step, state }) => isSowing(step) && state.code !== 'closed');
    return sowings.length ? sowings : plantings;
  });
  return steps.sort((a, b) => compare(a.to, b.to) || compare(a.from, b.from));
}

// Seed goes somewhere.
function isSowing(step: DatedWindow['step']): boolean {
  return step === 'under-cover' || step === 'seedbed' || step === 'in-place';
}

function compare(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
