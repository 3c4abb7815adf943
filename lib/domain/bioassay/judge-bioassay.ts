import { bioassayRules } from '../catalogue/bioassay-protocols';
import { type BioassayRecord, checkedRecord, lastReadings, type PotReading, readThroughDay } from './record';

export type BioassayReason =
  | { readonly code: 'too-few-pots'; readonly kind: 'test' | 'control'; readonly pots: number; readonly wanted: number }
  | { readonly code: 'too-few-seeds'; readonly wanted: number }
  | { readonly code: 'pots-not-read'; readonly kind: 'test' | 'control'; readonly pots: number }
  | { readonly code: 'controls-distorted'; readonly plants: number }
  | { readonly code: 'controls-did-not-come-up'; readonly upPercent: number; readonly wantedPercent: number }
  | { readonly code: 'controls-stayed-small'; readonly trueLeaves: number }
  | { readonly code: 'distorted-leaves'; readonly plants: number }
  | { readonly code: 'poor-emergence'; readonly upPercent: number; readonly controlPercent: number }
  | { readonly code: 'behind-the-controls'; readonly trueLeaves: number }
  | { readonly code: 'seen-before-the-end' | 'salt-or-raw-compost-can-look-so' | 'only-what-was-in-the-pots' }
  | { readonly code: 'still-growing'; readonly day: number }
  | { readonly code: 'not-sown' };

export type BioassayVerdict = {
  /** Never an all-clear: at best nothing was seen in these pots. */
  readonly verdict: 'no-symptoms-seen' | 'symptoms' | 'not-valid' | 'not-finished';
  readonly reasons: readonly BioassayReason[];
};

/**
 * What a bioassay of manure shows so far.
 *
 * Method: too few pots or seeds, or controls that fail, make it say nothing. Distorted leaves count as soon as they are
 * seen beside sound controls; under half of the controls' emergence, or plants without their leaves when the controls
 * have them, once it is finished: when every pot has three sets of true leaves, from day 21 when the controls have
 * them, and on day 28 in any case. Pots that were never read keep it open.
 *
 * @param record       of any stage
 * @returns            the verdict with its reasons; salt and immature compost can look the same as weedkiller, which is
 *                     said
 * @throws RangeError  on a record that contradicts itself
 * @source             North Carolina State and Oregon State Universities, as relayed (pots, seeds, leaves); CalRecycle
 *                     (false positives); thresholds: common practice
 * @example            three test and three control pots, nine plants of each sound with three sets of leaves → no
 *                     symptoms seen
 */
export function judgeBioassay(record: BioassayRecord): BioassayVerdict {
  checkedRecord(record);
  const short = shortages(record);
  if (short.length > 0) return { verdict: 'not-valid', reasons: short };
  if (record.sownOn === null) return { verdict: 'not-finished', reasons: [{ code: 'not-sown' }] };
  const controlsHit = distorted(record, 'control');
  if (controlsHit > 0)
    return {
      verdict: 'not-valid',
      reasons: [{ code: 'controls-distorted', plants: controlsHit }, ...distortion(record)],
    };
  const day = readThroughDay(record);
  if (day === null) return { verdict: 'not-finished', reasons: [...unread(record), ...distortion(record)] };
  const controls = lastReadings(record, 'control');
  const tests = lastReadings(record, 'test');
  const ended = hasEnded(tests, controls, day);
  const failed = ended ? failures(record, controls) : [];
  if (failed.length > 0) return { verdict: 'not-valid', reasons: [...failed, ...distortion(record)] };
  const symptoms = [...distortion(record), ...(ended ? slowness(record, tests, controls) : [])];
  if (symptoms.length > 0) return { verdict: 'symptoms', reasons: [...symptoms, ...cautions(ended)] };
  return ended
    ? { verdict: 'no-symptoms-seen', reasons: [{ code: 'only-what-was-in-the-pots' }] }
    : { verdict: 'not-finished', reasons: [{ code: 'still-growing', day }] };
}

function cautions(ended: boolean): BioassayReason[] {
  return [...(ended ? [] : [{ code: 'seen-before-the-end' as const }]), { code: 'salt-or-raw-compost-can-look-so' }];
}

function shortages({ pots }: BioassayRecord): BioassayReason[] {
  const { leastTestPots, leastControlPots, leastSeedsAPot } = bioassayRules;
  const few = (kind: 'test' | 'control', wanted: number): BioassayReason[] => {
    const count = pots.filter((pot) => pot.kind === kind).length;
    return count < wanted ? [{ code: 'too-few-pots', kind, pots: count, wanted }] : [];
  };
  return [
    ...few('test', leastTestPots),
    ...few('control', leastControlPots),
    ...(pots.some(({ seeds }) => seeds < leastSeedsAPot)
      ? [{ code: 'too-few-seeds' as const, wanted: leastSeedsAPot }]
      : []),
  ];
}

function hasEnded(tests: readonly PotReading[], controls: readonly PotReading[], day: number): boolean {
  if (day >= bioassayRules.lastDay) return true;
  if (!allGrown(controls)) return false;
  return day >= bioassayRules.enoughDays || allGrown(tests);
}

/** Whether every pot has plants, with their leaves. */
function allGrown(readings: readonly PotReading[]): boolean {
  return (
    readings.length > 0 && readings.every(({ up, trueLeaves }) => up > 0 && trueLeaves >= bioassayRules.trueLeaves)
  );
}

function failures(record: BioassayRecord, controls: readonly PotReading[]): BioassayReason[] {
  const upPercent = emergence(record, 'control', controls);
  if (upPercent < bioassayRules.leastUpPercent)
    return [{ code: 'controls-did-not-come-up', upPercent, wantedPercent: bioassayRules.leastUpPercent }];
  const furthest = Math.max(0, ...grown(controls));
  return furthest < bioassayRules.trueLeaves ? [{ code: 'controls-stayed-small', trueLeaves: furthest }] : [];
}

function unread(record: BioassayRecord): BioassayReason[] {
  return (['test', 'control'] as const).flatMap((kind): BioassayReason[] => {
    const pots = record.pots.filter((pot) => pot.kind === kind).length - lastReadings(record, kind).length;
    return pots > 0 ? [{ code: 'pots-not-read', kind, pots }] : [];
  });
}

function distortion(record: BioassayRecord): BioassayReason[] {
  const plants = distorted(record, 'test');
  return plants > 0 ? [{ code: 'distorted-leaves', plants }] : [];
}

/** Few plants, or slow ones: only the end of the test shows that there was time. */
function slowness(
  record: BioassayRecord,
  tests: readonly PotReading[],
  controls: readonly PotReading[],
): BioassayReason[] {
  const upPercent = emergence(record, 'test', tests);
  const controlPercent = emergence(record, 'control', controls);
  const trueLeaves = Math.min(...grown(tests));
  return [
    ...(upPercent * 100 < controlPercent * bioassayRules.leastUpPercent
      ? [{ code: 'poor-emergence' as const, upPercent, controlPercent }]
      : []),
    ...(trueLeaves < bioassayRules.trueLeaves && allGrown(controls)
      ? [{ code: 'behind-the-controls' as const, trueLeaves }]
      : []),
  ];
}

/** The most plants with distorted leaves on any one day: what was once seen is not taken back by a later day. */
function distorted({ pots, readings }: BioassayRecord, kind: 'test' | 'control'): number {
  const ofKind = new Set(pots.filter((pot) => pot.kind === kind).map(({ id }) => id));
  return Math.max(
    0,
    ...readings.map((reading) =>
      reading.pots.reduce((sum, pot) => sum + (ofKind.has(pot.potId) ? pot.distorted : 0), 0),
    ),
  );
}

/** Sets of true leaves of the pots where anything is up. */
function grown(readings: readonly PotReading[]): number[] {
  return readings.filter(({ up }) => up > 0).map(({ trueLeaves }) => trueLeaves);
}

/** What came up of the seeds in all pots of a kind, which is some, rounded down [percent]. */
function emergence({ pots }: BioassayRecord, kind: 'test' | 'control', readings: readonly PotReading[]): number {
  const seeds = pots.filter((pot) => pot.kind === kind).reduce((sum, pot) => sum + pot.seeds, 0);
  return Math.floor((readings.reduce((sum, { up }) => sum + up, 0) * 100) / seeds);
}
