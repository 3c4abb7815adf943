import { normalCdf } from '../statistics/normal-cdf';
import type { Scenario } from './scenarios';
import { lifeHazard } from './sound-share';

/** Lots as a forecast takes them: in the order in which they are used up. */
export type Stock = {
  /** Sound pieces at the last going over; not whole where they are weighed. */
  readonly pieces: readonly number[];
  /** For each lot, its age to the power of the shape at the last going over, then at each day of `days` [days ^ shape]. */
  readonly agePowers: readonly (readonly number[])[];
  /** Days since today, rising from 0. */
  readonly days: readonly number[];
  /** Days that passed since the use was last counted. */
  readonly uncountedDays: number;
  readonly mealPieces: number;
};

type Held = { readonly pieces: number[]; left: number; owed: number; variance: number };

/**
 * How likely anything is left on each day, if a scenario comes true.
 *
 * Method: from day to day each lot keeps exp(−hazard) of its pieces, and what is used is taken from the first lot that has any, at the
 * middle of the step. What cannot be taken is owed. The number left is then near normal: its mean is what is held less what is owed, its
 * variance gathers that of losses by the piece and of use by the meal. Anything is left where that is half a piece or more.
 *
 * @param stock     of the lots
 * @param scenario  lives, use and hazard
 * @param shape     of the curve of losses
 * @returns         for each of the days, 0 to 1, never rising; the days after nothing can be left are not among them
 * @source          docs/decisions/0011-how-long-a-lot-lasts.md
 */
export function runDown(stock: Stock, scenario: Scenario, shape: number): readonly number[] {
  const { days } = stock;
  const rates = scenario.livesDays.map((life) => (lifeHazard * scenario.ahead) / life ** shape);
  const held: Held = { pieces: [...stock.pieces], left: 0, owed: 0, variance: 0 };
  const likely: number[] = [];
  for (let step = 0; step < days.length && likely[step - 1] !== 0; step++) {
    const passed = step === 0 ? stock.uncountedDays : (days[step] ?? 0) - (days[step - 1] ?? 0);
    pass(held, { stock, rates, step, wanted: scenario.piecesPerDay * passed });
    likely.push(Math.min(likely[step - 1] ?? 1, anythingLeft(held)));
  }
  return likely;
}

type Step = {
  readonly stock: Stock;
  readonly rates: readonly number[];
  readonly step: number;
  readonly wanted: number;
};

// One step of time, in place: this is where the forecast spends its own.
function pass(held: Held, { stock, rates, step, wanted: wantedNow }: Step): void {
  let wanted = wantedNow;
  let stood = 0;
  let kept = 0;
  let lossVariance = 0;
  held.left = 0;
  for (let lot = 0; lot < rates.length; lot++) {
    const before = held.pieces[lot] ?? 0;
    if (before === 0) continue;
    const powers = stock.agePowers[lot] ?? [];
    const half = Math.exp(((rates[lot] ?? 0) * ((powers[step] ?? 0) - (powers[step + 1] ?? 0))) / 2);
    const taken = Math.min(wanted, before * half);
    wanted -= taken;
    const after = (before * half - taken) * half;
    held.pieces[lot] = after;
    held.left += after;
    stood += before;
    kept += before * half * half;
    lossVariance += before * half * half * (1 - half * half);
  }
  held.owed += wanted;
  const share = stood > 0 ? kept / stood : 1;
  held.variance = held.variance * share * share + lossVariance + wantedNow * stock.mealPieces * share;
}

function anythingLeft({ left, owed, variance }: Held): number {
  const over = left - owed - 0.5;
  const spread = Math.sqrt(variance);
  if (over >= 6 * spread) return 1;
  return over <= -6 * spread ? 0 : normalCdf(over / spread);
}
