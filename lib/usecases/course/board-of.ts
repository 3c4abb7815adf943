import type { CourseRecord } from '@/lib/data/course';
import type { Board, Found } from './wishes';

/** The plan as it stands: as it was changed by hand, else as it was found; null while there is none. */
export function boardOf({ board, found }: Pick<CourseRecord, 'board' | 'found'>): Board | null {
  return (board as Board | null) ?? (found as Found | null)?.board ?? null;
}
