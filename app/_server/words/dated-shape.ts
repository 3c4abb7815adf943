import type { Dated } from '@/lib/domain/reminders/dated';

/** The words of something with a day: its title, what more there is to say, and its page without the society’s part. */
export type DatedWords = { readonly title: string; readonly note: string; readonly path: string };

/** Words by code, for one area. */
export type DatedTable = Readonly<Record<string, (facts: Dated['facts']) => DatedWords>>;
