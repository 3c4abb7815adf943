import 'server-only';
import { instantIn, wallIn } from '@/lib/platform/clock';
import { refuse } from './refusal';

/** The instant that something closes at. A time that spring's change of the clocks skips is no time to close at. */
export function closingAt(timeZone: string, wall: string): Date {
  const instant = instantIn(timeZone, wall);
  if (wallIn(timeZone, instant) !== wall)
    refuse('closing-time-skipped', { field: 'closesAt', numbers: { at: wall.replace('T', ' ') } });
  return instant;
}
