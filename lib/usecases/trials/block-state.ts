import type { TrialRecord } from '@/lib/data/trial';
import type { BlockRecord, GroundRecord, ResultRecord } from '@/lib/data/trial-block';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { type TrialState, trialState } from '@/lib/domain/trial/trial-state';

/** The blocks that are still in a trial. */
export function stillIn(blocks: readonly BlockRecord[]): BlockRecord[] {
  return blocks.filter(({ left }) => left === null);
}

/** What a piece of ground gave, as it was confirmed last; null where nothing was. */
export function resultOf({ results }: GroundRecord): ResultRecord | null {
  return results[0] ?? null;
}

/** Whether a block has both results. */
export function isWhole({ grounds }: BlockRecord): boolean {
  return grounds.every((ground) => resultOf(ground) !== null);
}

/** Where a trial stands, with its blocks. */
export function stateWith(trial: TrialRecord, blocks: readonly BlockRecord[], today: CalendarDate): TrialState {
  const left = stillIn(blocks);
  return trialState(trial, today, left.length > 0 && left.every(isWhole));
}
