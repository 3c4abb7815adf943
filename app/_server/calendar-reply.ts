import 'server-only';
import { calendarFile } from '@/lib/platform/calendar-file';
import { env } from '@/lib/platform/env';
import type { Feed } from '@/lib/usecases/reminders/calendar-feed';
import { datedWords } from './words/dated';

/** What a calendar is told, as the file that it reads. */
export function calendarText({ societyId, societyName, slug, told }: Feed): string {
  const entries = told.map(({ dated, sequence, changedAtMs, cancelled }) => {
    const { title, note, path } = datedWords(dated);
    const { key, from, to } = dated;
    return {
      ...{ title, note, from, to, sequence, cancelled },
      // The same for every feed of the society, for ever: no host in it, which may change.
      uid: `${key.replaceAll(' ', '-')}@${societyId}`,
      url: `${env().nextAuthUrl}/${slug}${path}`,
      changedAt: new Date(changedAtMs),
    };
  });
  return calendarFile(societyName, entries);
}
