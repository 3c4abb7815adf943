import {
  byTheClock,
  type Exertion,
  energyLimits,
  longestSpellMinutes,
  type PaceKey,
  paceOf,
  standardBodyKg,
} from '../catalogue/paces';
import { wholeFrom } from '../quantity/checked';
import { energyKcalPerMin } from './energy';
import { restMinutes } from './rest';

export type AgeBand = 'under-60' | '60-or-over' | 'not-said';

/** Who digs, how hard, and for how long at one go. */
export type Digger = {
  readonly ageBand: AgeBand;
  readonly pace: PaceKey;
  /** Whole number, 30 to 250 [kg]; null where it was not said. */
  readonly bodyMassKg: number | null;
  /** With its rests; whole number, 10 to 480 [min]. */
  readonly sessionMinutes: number;
  /** Mean energy to be kept to [kcal/min]; null for the usual one. */
  readonly limitKcalPerMin: number | null;
};

/** What the rests were reckoned from. Without a figure for the age there is no energy in it at all. */
export type Basis =
  | {
      readonly code: 'adults-19-59';
      readonly exertion: Exertion;
      readonly bodyMassKg: number;
      readonly bodyMass: 'said' | 'assumed';
      readonly workKcalPerMin: number;
      readonly limitKcalPerMin: number;
    }
  | { readonly code: 'by-the-clock'; readonly why: '60-or-over' | 'age-not-said' };

/** One session: digging and rest make up its minutes; unrounded. */
export type Session = {
  readonly totalMin: number;
  readonly diggingMin: number;
  readonly restMin: number;
  /** Spells of digging, each with its share of the rest after it; none longer than a quarter of an hour. */
  readonly spells: number;
};

/**
 * What a digger's rests are reckoned from: published energy costs for whoever said that they are under 60, else the clock.
 *
 * Method: the energy costs hold for ages 19 to 59. Nobody else, nor whoever has not said, is given them.
 *
 * @throws RangeError on a body, a pace or a limit that is none
 * @source       Compendium of Physical Activities 2011 and 2024; NIOSH 1981: for a group on average, never for one person
 * @example      under 60, steady, 70 kg → adults-19-59 at 6.125 kcal/min against 4
 */
export function basisOf({ ageBand, pace, bodyMassKg, limitKcalPerMin }: Digger): Basis {
  const { exertion } = paceOf(pace);
  const massKg = wholeFrom(30, bodyMassKg ?? standardBodyKg.value);
  if (massKg > 250) throw new RangeError(`nobody weighs ${massKg} kg`);
  const limit = limitKcalPerMin ?? energyLimits.usual.kcalPerMin;
  if (!(limit >= energyLimits.least.kcalPerMin && limit <= energyLimits.most.kcalPerMin))
    throw new RangeError(
      `the limit lies from ${energyLimits.least.kcalPerMin} to ${energyLimits.most.kcalPerMin}: ${limit}`,
    );
  if (ageBand !== 'under-60')
    return { code: 'by-the-clock', why: ageBand === '60-or-over' ? '60-or-over' : 'age-not-said' };
  return {
    code: 'adults-19-59',
    exertion,
    bodyMassKg: massKg,
    bodyMass: bodyMassKg === null ? 'assumed' : 'said',
    workKcalPerMin: energyKcalPerMin(exertion.met, massKg),
    limitKcalPerMin: limit,
  };
}

/**
 * One session of a digger, first or later.
 *
 * Method: by energy, rest until the session's mean is at the limit. By the clock, half an hour the first time and an hour
 * after that, or less where less was asked, and at least as much rest as digging. Digging goes in spells of a quarter of an
 * hour at the most, the rest shared out between them.
 *
 * @param place  from 0
 * @returns      digging > 0; digging and rest sum to the session
 * @throws RangeError on a session shorter than 10 or longer than 480 minutes, and as `basisOf`
 * @source       Murrell 1965; half an hour to an hour at first: Ministry of Agriculture, How to Dig; a quarter of an hour:
 *               Canadian Centre for Occupational Health and Safety, Shovelling; rest as long as digging: common practice
 * @example      under 60, steady, 70 kg, an hour → 32.4 min of digging in three spells, 27.6 of rest
 */
export function sessionOf(digger: Digger, place: number): Session {
  const asked = wholeFrom(10, digger.sessionMinutes);
  if (asked > 480) throw new RangeError(`a session is at most eight hours: ${asked} min`);
  const basis = basisOf(digger);
  if (basis.code === 'adults-19-59')
    return spelled(asked, asked - restMinutes(asked, basis.workKcalPerMin, basis.limitKcalPerMin));
  const most = wholeFrom(0, place) === 0 ? byTheClock.firstSessionMinutes : byTheClock.sessionMinutes;
  const totalMin = Math.min(asked, most.value);
  return spelled(totalMin, (totalMin * byTheClock.workPercent.value) / 100);
}

function spelled(totalMin: number, diggingMin: number): Session {
  const spells = Math.ceil(diggingMin / longestSpellMinutes.value);
  return { totalMin, diggingMin, restMin: totalMin - diggingMin, spells };
}
