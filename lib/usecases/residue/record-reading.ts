import 'server-only';
import type { z } from 'zod';
import { type ResidueTestRecord, saveResidueRecord } from '@/lib/data/residue-test';
import { recordThatStands } from '@/lib/domain/bioassay/kept-record';
import { type BioassayPot, checkedRecord, type PotReading } from '@/lib/domain/bioassay/record';
import type { CalendarDate } from '@/lib/domain/calendar/calendar-date';
import { canEnter } from '@/lib/domain/policy/standing';
import { recordReadingInput } from '@/lib/schemas/residue/test';
import { mutation } from '../operation';
import { type Refusal, Refused, refuse } from '../refusal';
import { testKept } from './open-test';

type Line = z.output<typeof recordReadingInput>['pots'][number];

/** Record what the pots show on a day, or correct what was recorded. A pot whose line is left empty was not read. */
export const recordReading = mutation({
  name: 'record-residue-reading',
  allow: canEnter,
  input: recordReadingInput,
  write: async (context, { testId, on, replaces, pots: lines }) => {
    const { tx, scope, now, today, note } = context;
    const test = await testKept(context, testId);
    const before = checkDay(test, on, replaces, today);
    const pots = readPots(test.kept.pots, lines);
    const entry = { on, replaces, pots, byMemberId: scope.memberId, at: now.toISOString() };
    const kept = { ...test.kept, entered: [...test.kept.entered, entry] };
    checkedRecord(recordThatStands(kept));
    await saveResidueRecord(tx, scope, testId, kept, now);
    // What one's own manure showed is nobody else's to read: the book holds the day alone.
    const shown = (read: readonly PotReading[]) => (test.deliveryId === null ? {} : { pots: read.map(inBook) });
    note({
      verb: before ? 'reading corrected' : 'read',
      thing: 'residue test',
      thingId: testId,
      before: before && { on: before.on, ...shown(before.pots) },
      after: { on, ...shown(pots) },
    });
    return { testId, deliveryId: test.deliveryId };
  },
});

function inBook({ potId, up, distorted, trueLeaves }: PotReading): string {
  return `${potId}: ${up} up, ${distorted} distorted, ${trueLeaves} sets`;
}

/** The reading that is corrected, or null for a new one; refused where the day cannot be. */
function checkDay(test: ResidueTestRecord, on: CalendarDate, replaces: CalendarDate | null, today: CalendarDate) {
  const { sownOn, readings } = recordThatStands(test.kept);
  if (sownOn === null) refuse('not-sown-yet', { field: 'on' });
  if (on > today) refuse('read-in-the-future', { field: 'on' });
  if (on < sownOn) refuse('read-before-sown', { field: 'on', numbers: { sownOn } });
  const before = readings.find((reading) => reading.on === replaces) ?? null;
  if (replaces !== null && !before) refuse('reading-not-there', { field: 'replaces' });
  // A slip is mended after the end too; nothing new is read.
  if (before === null && test.endedAt !== null) refuse('test-ended');
  if (on !== replaces && readings.some((reading) => reading.on === on))
    refuse('read-that-day-already', { field: 'on' });
  return before;
}

/** The lines as they were typed, each fault beside its pot. */
function readPots(pots: readonly BioassayPot[], lines: readonly Line[]): PotReading[] {
  const refusals: Refusal[] = [];
  const read = lines.flatMap((line, at): PotReading[] => {
    const pot = pots.find(({ id }) => id === line.potId);
    if (!pot || lines.findIndex(({ potId }) => potId === line.potId) !== at) refuse('pot-not-there', { field: 'pots' });
    if (isBlank(line)) return [];
    const found = readLine(pot, line);
    if ('code' in found) refusals.push(found);
    return 'code' in found ? [] : [found];
  });
  if (refusals.length) throw new Refused(refusals);
  if (read.length === 0) refuse('no-pot-read', { field: 'pots' });
  return read;
}

function isBlank({ up, distorted, trueLeaves }: Line): boolean {
  return [up, distorted, trueLeaves].every((typed) => typed.trim() === '');
}

function readLine({ id, seeds }: BioassayPot, line: Line): PotReading | Refusal {
  const up = wholeTyped(line.up);
  if (up === null) return { code: 'pot-half-read', field: `up:${id}` };
  // Where nothing is up there is nothing more to see.
  const unless = up === 0 ? 0 : null;
  const distorted = line.distorted.trim() === '' ? unless : wholeTyped(line.distorted);
  if (distorted === null) return { code: 'pot-half-read', field: `distorted:${id}` };
  const trueLeaves = line.trueLeaves.trim() === '' ? unless : wholeTyped(line.trueLeaves);
  if (trueLeaves === null) return { code: 'pot-half-read', field: `trueLeaves:${id}` };
  if (up > seeds) return { code: 'more-up-than-seeds', field: `up:${id}`, numbers: { seeds } };
  if (distorted > up) return { code: 'more-distorted-than-up', field: `distorted:${id}`, numbers: { up } };
  return { potId: id, up, distorted, trueLeaves };
}

function wholeTyped(text: string): number | null {
  return /^\d{1,2}$/.test(text.trim()) ? Number(text) : null;
}
