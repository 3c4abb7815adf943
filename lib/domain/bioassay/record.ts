import { type CalendarDate, daysBetween } from '../calendar/calendar-date';
import { wholeFrom } from '../quantity/checked';

/** A pot of the test: in the manure and mix, or in the mix alone. */
export type BioassayPot = { readonly id: string; readonly kind: 'test' | 'control'; readonly seeds: number };

/** What one pot showed on one day. */
export type PotReading = {
  readonly potId: string;
  /** Plants that are up. */
  readonly up: number;
  /** Of these, with leaves cupped, curled or drawn out like fern. */
  readonly distorted: number;
  /** Sets of true leaves on the plant that is furthest behind. */
  readonly trueLeaves: number;
};

export type BioassayReading = { readonly on: CalendarDate; readonly pots: readonly PotReading[] };

/** Peas or beans grown in bought-in manure, to see whether it carries weedkiller. */
export type BioassayRecord = {
  /** Null until it is sown. */
  readonly sownOn: CalendarDate | null;
  readonly manureParts: number;
  readonly mixParts: number;
  readonly pots: readonly BioassayPot[];
  readonly readings: readonly BioassayReading[];
};

/**
 * The last reading of each pot of a kind, with its day.
 *
 * @returns  one for each pot that was read at all, in the order of the pots
 * @example  a pot read on day 7 and on day 14 → what day 14 showed
 */
export function lastReadings(
  { pots, readings }: BioassayRecord,
  kind?: BioassayPot['kind'],
): (PotReading & { readonly on: CalendarDate })[] {
  const inOrder = [...readings].sort((a, b) => (a.on < b.on ? -1 : Number(a.on > b.on)));
  const all = inOrder.flatMap(({ on, pots: read }) => read.map((pot) => ({ ...pot, on })));
  return pots
    .filter((pot) => kind === undefined || pot.kind === kind)
    .flatMap(({ id }) => all.filter(({ potId }) => potId === id).slice(-1));
}

/**
 * A record that can be judged.
 *
 * @throws RangeError  on parts or seeds below one, a pot or a day that comes twice, a reading of no pot or before the
 *                     sowing, and more plants than seeds or more distorted than are up
 */
export function checkedRecord(record: BioassayRecord): BioassayRecord {
  [record.manureParts, record.mixParts].forEach((parts) => wholeFrom(1, parts));
  const seeds = new Map(record.pots.map((pot) => [pot.id, wholeFrom(1, pot.seeds)]));
  if (seeds.size !== record.pots.length) throw new RangeError('a pot stands in a test once');
  if (new Set(record.readings.map(({ on }) => on)).size !== record.readings.length)
    throw new RangeError('a test is read once a day');
  for (const { on, pots } of record.readings) {
    if (record.sownOn === null || on < record.sownOn) throw new RangeError(`read before it was sown: ${on}`);
    if (new Set(pots.map(({ potId }) => potId)).size !== pots.length) throw new RangeError('a pot is read once a day');
    for (const pot of pots) checkPot(pot, seeds.get(pot.potId));
  }
  return record;
}

function checkPot({ potId, up, distorted, trueLeaves }: PotReading, seeds: number | undefined): void {
  if (seeds === undefined) throw new RangeError(`no such pot: ${potId}`);
  wholeFrom(0, trueLeaves);
  if (wholeFrom(0, up) > seeds || wholeFrom(0, distorted) > up)
    throw new RangeError(`more plants than there can be in pot ${potId}`);
}

/** The age up to which every pot has been read [days]; null while one was never read. */
export function readThroughDay(record: BioassayRecord): number | null {
  const { sownOn, pots } = record;
  const last = lastReadings(record);
  const [earliest] = last.map(({ on }) => on).sort();
  return sownOn && earliest && last.length === pots.length ? daysBetween(sownOn, earliest) : null;
}
