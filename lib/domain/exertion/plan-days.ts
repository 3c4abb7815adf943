import type { DiggingMethod } from '../catalogue/digging-methods';
import { positive, wholeFrom } from '../quantity/checked';
import { daysOfSessions, mostSessionsPerWeek, sessionsInDays } from './calendar-days';
import { diggingMinutes } from './digging-minutes';
import { type Basis, basisOf, type Digger, type Session, sessionOf } from './session';
import { splitTrenches, type TrenchPart } from './split-trenches';

export type DiggingWork =
  | { readonly kind: 'area'; readonly areaCm2: number; readonly method: DiggingMethod }
  /** A member's own reckoning of the digging in it, rests apart [min]. */
  | { readonly kind: 'minutes'; readonly minutes: number }
  /** The same by the trench, in order of work [min]. */
  | { readonly kind: 'trenches'; readonly minutes: readonly number[] };

export type DiggingOrder = {
  readonly work: DiggingWork;
  readonly digger: Digger;
  /** Whole number, 1 to 14. */
  readonly sessionsPerWeek: number;
  /** Calendar days until it must be done, today among them; whole number ≥ 0. */
  readonly daysLeft: number;
  /** Soil turned in all; null where it is not known [g]. */
  readonly soilMassG: number | null;
  /** Sessions that the digger has had at this work already; whole number ≥ 0, none where nothing is said. */
  readonly sessionsDone?: number;
};

export type InTime =
  | { readonly code: 'enough'; readonly spareDays: number }
  | {
      readonly code: 'not-enough';
      readonly shortByDays: number;
      /** What can be done until then. */
      readonly sessionsByThen: number;
      readonly minutesByThen: number;
      /** The fewest sessions a week that would do; null where no number does. */
      readonly sessionsPerWeekEnough: number | null;
    };

/** What a screen must say beside the figures. */
export type PlanNote = 'group-averages' | 'no-energy-figure' | 'session-shortened' | 'weight-assumed';

export type DiggingPlan = {
  readonly basis: Basis;
  readonly notes: readonly PlanNote[];
  /** Digging in all, rests apart [min]. */
  readonly minutes: number;
  readonly firstSession: Session;
  readonly laterSession: Session;
  readonly sessions: number;
  /** From the first session to the last, both counted. */
  readonly daysNeeded: number;
  readonly inTime: InTime;
  /** What falls to each session, where the work came by the trench. */
  readonly split: readonly (readonly TrenchPart[])[] | null;
  /** Soil turned in the heaviest session [g]; null where it is not known. */
  readonly soilPerSessionG: number | null;
};

/**
 * Digging work parted over sessions and calendar days that a body can stand.
 *
 * Method: minutes of digging ÷ what a session holds beside its rests, whole trenches wherever they fit; sessions spread evenly
 * over the week. Guidance, no limit of anybody's: whoever is tired or hurts stops.
 *
 * @param order  work > 0; sizes as stated at their types
 * @returns      sessions whose digging covers the work; times unrounded [min]; days and sessions whole ≥ 1
 * @throws RangeError on no work, and on anything out of its bounds
 * @source       as `sessionOf` and `diggingMinutes`
 * @example      9 m² double, gentle, under 60, 70 kg, an hour three times a week → 360 min in 7 sessions, 15 days
 */
export function planDays(order: DiggingOrder): DiggingPlan {
  const { work, digger, sessionsPerWeek, soilMassG, sessionsDone = 0 } = order;
  const basis = basisOf(digger);
  const [firstSession, laterSession] = [sessionOf(digger, sessionsDone), sessionOf(digger, sessionsDone + 1)];
  const minutes = minutesOf(work, digger);
  const split =
    work.kind === 'trenches'
      ? splitTrenches(work.minutes, (place) => (place === 0 ? firstSession : laterSession).diggingMin)
      : null;
  const each = split?.map(sumOf) ?? evenly(minutes, firstSession.diggingMin, laterSession.diggingMin);
  const heaviest = each.reduce((most, one) => Math.max(most, one), 0);
  return {
    basis,
    notes: notesOf(basis, digger, laterSession),
    minutes,
    firstSession,
    laterSession,
    sessions: each.length,
    daysNeeded: daysOfSessions(each.length, sessionsPerWeek),
    inTime: inTime(each, order),
    split,
    soilPerSessionG: soilMassG === null ? null : Math.round((positive(soilMassG, 'soil') * heaviest) / minutes),
  };
}

function minutesOf(work: DiggingWork, { pace }: Digger): number {
  if (work.kind === 'area') return diggingMinutes(work.areaCm2, work.method, pace);
  return positive(work.kind === 'minutes' ? work.minutes : sum(work.minutes), 'digging');
}

/** The digging of each session where nothing says where to leave off: all are full but the last. */
function evenly(minutes: number, firstMin: number, laterMin: number): number[] {
  if (minutes <= firstMin) return [minutes];
  // A session is not begun for less than a second.
  const later = Math.max(1, Math.ceil((minutes - firstMin - 1 / 60) / laterMin));
  if (later > 100_000) throw new RangeError('sessions are too short for this ground');
  const last = minutes - firstMin - (later - 1) * laterMin;
  return [firstMin, ...Array.from({ length: later }, (_, at) => (at === later - 1 ? last : laterMin))];
}

function inTime(each: readonly number[], { sessionsPerWeek, daysLeft }: DiggingOrder): InTime {
  const daysNeeded = daysOfSessions(each.length, sessionsPerWeek);
  if (daysNeeded <= wholeFrom(0, daysLeft)) return { code: 'enough', spareDays: daysLeft - daysNeeded };
  const oftener = Array.from({ length: mostSessionsPerWeek - sessionsPerWeek }, (_, at) => sessionsPerWeek + 1 + at);
  const sessionsByThen = sessionsInDays(daysLeft, sessionsPerWeek);
  return {
    code: 'not-enough',
    shortByDays: daysNeeded - daysLeft,
    sessionsByThen,
    minutesByThen: sum(each.slice(0, sessionsByThen)),
    // Two sessions a day are no advice to give.
    sessionsPerWeekEnough:
      oftener.find((often) => often <= 7 && daysOfSessions(each.length, often) <= daysLeft) ?? null,
  };
}

function notesOf(basis: Basis, digger: Digger, later: Session): PlanNote[] {
  if (basis.code === 'by-the-clock')
    return later.totalMin < digger.sessionMinutes ? ['no-energy-figure', 'session-shortened'] : ['no-energy-figure'];
  return basis.bodyMass === 'assumed' ? ['group-averages', 'weight-assumed'] : ['group-averages'];
}

function sumOf(parts: readonly TrenchPart[]): number {
  return sum(parts.map((part) => part.minutes));
}

function sum(minutes: readonly number[]): number {
  return minutes.reduce((total, one) => total + one, 0);
}
