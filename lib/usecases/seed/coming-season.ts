import 'server-only';
import { type CalendarDate, yearOf } from '@/lib/domain/calendar/calendar-date';

/** The season that seed is bought for: from 1 October the next one. */
export function comingSeason(today: CalendarDate): number {
  return yearOf(today) + (today.slice(5) >= '10-01' ? 1 : 0);
}
