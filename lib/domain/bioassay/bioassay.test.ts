import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, calendarDate } from '../calendar/calendar-date';
import { bioassayProtocols } from '../catalogue/bioassay-protocols';
import { sources } from '../catalogue/sources';
import { bioassayState } from './bioassay-state';
import { judgeBioassay } from './judge-bioassay';
import { type BioassayPot, type BioassayReading, type BioassayRecord, lastReadings, readThroughDay } from './record';

const sownOn = calendarDate('2027-05-01');
const after = (days: number) => addDays(sownOn, days);
const pots = (tests: number, controls: number, seeds = 3): BioassayPot[] => [
  ...Array.from({ length: tests }, (_, at) => ({ id: `t${at}`, kind: 'test' as const, seeds })),
  ...Array.from({ length: controls }, (_, at) => ({ id: `c${at}`, kind: 'control' as const, seeds })),
];
const record = (over: Partial<BioassayRecord> = {}): BioassayRecord => ({
  sownOn,
  manureParts: 1,
  mixParts: 1,
  pots: pots(3, 3),
  readings: [],
  ...over,
});

type Shown = { readonly up?: number; readonly distorted?: number; readonly trueLeaves?: number };
/** One reading of all six pots: sound plants with their leaves, but for what is said. */
const read = (days: number, tests: Shown = {}, controls: Shown = {}): BioassayReading => ({
  on: after(days),
  pots: pots(3, 3).map(({ id, kind }) => ({
    potId: id,
    up: 3,
    distorted: 0,
    trueLeaves: 3,
    ...(kind === 'test' ? tests : controls),
  })),
});
const judged = (...readings: readonly BioassayReading[]) => judgeBioassay(record({ readings }));
const codes = ({ reasons }: { readonly reasons: readonly { readonly code: string }[] }) =>
  reasons.map(({ code }) => code);

describe('the verdict', () => {
  test('at best nothing was seen in these pots', () =>
    expect(judged(read(18))).toEqual({
      verdict: 'no-symptoms-seen',
      reasons: [{ code: 'only-what-was-in-the-pots' }],
    }));

  test.each([
    ['too few test pots', pots(2, 3), ['too-few-pots']],
    ['too few controls', pots(3, 2), ['too-few-pots']],
    ['no pots', [], ['too-few-pots', 'too-few-pots']],
    ['too few seeds', pots(3, 3, 2), ['too-few-seeds']],
  ])('says nothing with %s', (_, set, expected) => {
    const verdict = judgeBioassay(record({ pots: set }));
    expect([verdict.verdict, codes(verdict)]).toEqual(['not-valid', expected]);
  });

  test('is open before it is sown, before it is read, and while pots are unread', () => {
    expect(judgeBioassay(record({ sownOn: null }))).toEqual({
      verdict: 'not-finished',
      reasons: [{ code: 'not-sown' }],
    });
    expect(judged()).toEqual({
      verdict: 'not-finished',
      reasons: [
        { code: 'pots-not-read', kind: 'test', pots: 3 },
        { code: 'pots-not-read', kind: 'control', pots: 3 },
      ],
    });
    const half = { on: after(28), pots: read(28, { distorted: 1 }).pots.filter(({ potId }) => potId.startsWith('t')) };
    expect(codes(judged(half))).toEqual(['pots-not-read', 'distorted-leaves']);
  });

  test('waits for three leaves, or for day 21 with the controls’, or for day 28', () => {
    const slow = { trueLeaves: 2 };
    expect(judged(read(20, slow)).verdict).toBe('not-finished');
    expect(judged(read(21, slow)).verdict).toBe('symptoms');
    expect(judged(read(27, {}, slow)).verdict).toBe('not-finished');
    expect(judged(read(28, {}, slow))).toMatchObject({
      verdict: 'not-valid',
      reasons: [{ code: 'controls-stayed-small', trueLeaves: 2 }],
    });
    expect(judged(read(12)).verdict).toBe('no-symptoms-seen');
  });

  test('a pot read long ago keeps it open', () => {
    const early = read(14, { trueLeaves: 1 });
    const late = { on: after(28), pots: read(28).pots.filter(({ potId }) => potId !== 't0') };
    expect(judged(early, late)).toEqual({ verdict: 'not-finished', reasons: [{ code: 'still-growing', day: 14 }] });
  });

  test('distorted leaves count at once, and are not taken back', () => {
    const seen = judged(read(10, { distorted: 1, trueLeaves: 1 }, { trueLeaves: 1 }));
    expect([seen.verdict, codes(seen)]).toEqual([
      'symptoms',
      ['distorted-leaves', 'seen-before-the-end', 'salt-or-raw-compost-can-look-so'],
    ]);
    expect(seen.reasons).toContainEqual({ code: 'distorted-leaves', plants: 3 });
    expect(judged(read(10, { distorted: 1 }), read(21)).verdict).toBe('symptoms');
  });

  test('few or slow plants count at the end', () => {
    expect(judged(read(21, { up: 1 })).reasons).toContainEqual({
      code: 'poor-emergence',
      upPercent: 33,
      controlPercent: 100,
    });
    expect(judged(read(21, { up: 2 })).verdict).toBe('no-symptoms-seen');
    expect(codes(judged(read(21, { trueLeaves: 1 })))).toContain('behind-the-controls');
    expect(codes(judged(read(21, { up: 0, trueLeaves: 0 })))).toEqual([
      'poor-emergence',
      'salt-or-raw-compost-can-look-so',
    ]);
  });

  test('controls that fail make it say nothing, whatever the manure did', () => {
    expect(codes(judged(read(10, { distorted: 2 }, { distorted: 1 })))).toEqual([
      'controls-distorted',
      'distorted-leaves',
    ]);
    expect(judged(read(28, {}, { up: 1 }))).toMatchObject({
      verdict: 'not-valid',
      reasons: [{ code: 'controls-did-not-come-up', upPercent: 33, wantedPercent: 50 }],
    });
    expect(judged(read(28, {}, { up: 0, trueLeaves: 0 })).verdict).toBe('not-valid');
  });
});

describe('a record that contradicts itself', () => {
  const pot = { potId: 't0', up: 1, distorted: 0, trueLeaves: 0 };
  const reading = (over: object) => record({ readings: [{ on: after(7), pots: [{ ...pot, ...over }] }] });
  test.each([
    ['more up than sown', reading({ up: 4 })],
    ['more distorted than up', reading({ distorted: 2 })],
    ['less than nothing', reading({ trueLeaves: -1 })],
    ['half a plant', reading({ up: 0.5 })],
    ['a pot that is none', reading({ potId: 'x' })],
    ['a pot twice', record({ readings: [{ on: after(7), pots: [pot, pot] }] })],
    ['a day twice', record({ readings: [read(7), read(7)] })],
    ['before it was sown', record({ readings: [read(-1)] })],
    ['read but never sown', record({ sownOn: null, readings: [read(7)] })],
    ['two pots of one name', record({ pots: [...pots(3, 3), ...pots(1, 0)] })],
    ['a pot without seeds', record({ pots: pots(3, 3, 0) })],
    ['no manure in the mix', record({ manureParts: 0 })],
  ])('is refused: %s', (_, wrong) => {
    expect(() => judgeBioassay(wrong)).toThrow(RangeError);
    expect(() => bioassayState(wrong, sownOn)).toThrow(RangeError);
  });
});

describe('what is next', () => {
  const next = (given: Partial<BioassayRecord>, days: number) => bioassayState(record(given), after(days));

  test('set out, sow, read weekly', () => {
    expect(next({ sownOn: null, pots: [] }, 0)).toMatchObject({ next: 'set-out', dueOn: null, readingDays: [] });
    expect(next({ sownOn: null }, 0)).toMatchObject({ next: 'sow', due: false });
    expect(next({}, 0)).toMatchObject({ next: 'read', dueOn: after(7), due: false, lateDays: 0 });
    expect(next({}, 7)).toMatchObject({ dueOn: after(7), due: true, lateDays: 0 });
    expect(next({ readings: [read(7, { trueLeaves: 1 })] }, 15)).toMatchObject({
      dueOn: after(14),
      due: true,
      lateDays: 1,
      readingDays: [{ read: true }, { read: false }, { read: false }, { read: false }],
    });
  });

  test('a late reading serves the days before it', () =>
    expect(next({ readings: [read(15, { trueLeaves: 1 })] }, 15)).toMatchObject({ dueOn: after(21), due: false }));

  test('judged, or to be started again', () => {
    expect(next({ readings: [read(14)] }, 14)).toMatchObject({ next: 'judged', dueOn: null });
    expect(next({ readings: [read(10, { distorted: 1 })] }, 10)).toMatchObject({ next: 'judged' });
    expect(next({ readings: [read(28, {}, { up: 0 })] }, 28)).toMatchObject({ next: 'start-again' });
    expect(next({ pots: pots(3, 1) }, 5)).toMatchObject({ next: 'start-again' });
  });

  test('past the last day it is the pots that were left out', () => {
    const late = { on: after(28), pots: read(28).pots.slice(1) };
    expect(next({ readings: [late] }, 30)).toMatchObject({ next: 'read', due: true });
  });
});

test('the last reading of a pot goes, in whatever order they come, and nothing is changed', () => {
  const given = record({ readings: [read(14, { trueLeaves: 2 }), read(7, { trueLeaves: 1 })] });
  const before = structuredClone(given);
  expect(lastReadings(given, 'test').map(({ trueLeaves, on }) => [trueLeaves, on])).toEqual([
    [2, after(14)],
    [2, after(14)],
    [2, after(14)],
  ]);
  expect(readThroughDay(given)).toBe(14);
  expect(readThroughDay(record())).toBeNull();
  judgeBioassay(given);
  expect(given).toEqual(before);
});

test('nothing seen is only ever said of sound controls and sound plants, all of them read to the end', () => {
  const shown = fc
    .record({ up: fc.nat(3), distorted: fc.nat(3), trueLeaves: fc.nat(4) })
    .map((one) => ({ ...one, distorted: Math.min(one.up, one.distorted % 2) }));
  const readings = fc.uniqueArray(fc.tuple(fc.integer({ min: 0, max: 40 }), shown, shown), {
    maxLength: 4,
    selector: ([days]) => days,
  });
  fc.assert(
    fc.property(readings, (rows) => {
      const { verdict } = judged(...rows.map(([days, tests, controls]) => read(days, tests, controls)));
      if (verdict !== 'no-symptoms-seen') return;
      const [days, tests, controls] = [...rows].sort((a, b) => b[0] - a[0])[0] ?? expect.fail('nothing was read');
      expect(rows.every(([, test, control]) => test.distorted === 0 && control.distorted === 0)).toBe(true);
      expect(controls.up >= 2 && controls.trueLeaves >= 3 && tests.up > 0).toBe(true);
      expect(tests.trueLeaves >= 3 && days >= 0).toBe(true);
    }),
    { numRuns: 500 },
  );
});

test('protocols have their sources and a mix', () => {
  for (const { source, manureParts, mixParts } of bioassayProtocols)
    expect(Object.hasOwn(sources, source) && manureParts > 0 && mixParts > 0).toBe(true);
});
