import type { readCollecting } from '@/lib/usecases/deliveries/read-collecting';

export type Collecting = Awaited<ReturnType<typeof readCollecting.run>>;
export type Share = Collecting['rows'][number];

/** Until when a tick can be undone by whoever ticked. */
export function untilWords(until: Date, timeZone: string): string {
  const at = until.toLocaleTimeString('en-GB', { timeZone, hour: '2-digit', minute: '2-digit' });
  return `until ${at}; later by the secretary`;
}

/** The rows of a plot, by its number as it was typed: the number itself before those that begin so; all where nothing was typed. */
export function rowsOfPlot(rows: readonly Share[], typed: string): readonly Share[] {
  const wanted = typed.trim().toLowerCase();
  if (wanted === '') return rows;
  const has = (fits: (number: string) => boolean) =>
    rows.filter(({ plots }) => plots.some((number) => fits(number.toLowerCase())));
  const exact = has((number) => number === wanted);
  return exact.length ? exact : has((number) => number.startsWith(wanted));
}
