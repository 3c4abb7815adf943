import { lossModel } from '../catalogue/store-model';
import { evenSpread } from '../statistics/even-spread';
import { normalQuantile } from '../statistics/normal-quantile';
import { type HouseholdUse, piecesPerDayAt } from './household-use';
import { type LifeBelief, lifeDaysAt } from './life-posterior';

/** One way in which it may go: how long each lot lives, how fast losses come from here on, how fast it is used. */
export type Scenario = {
  /** In the order of the lots [days]. */
  readonly livesDays: readonly number[];
  /** The hazard ahead over the one behind. */
  readonly ahead: number;
  /** 0 where nothing is known of the use. */
  readonly piecesPerDay: number;
};

/** Enough: with forty times as many, the days of a forecast move by one in a hundred at most. */
const scenarioCount = 200;

/**
 * Ways in which a store may go, each as likely as the next.
 *
 * Method: points spread evenly (`evenSpread`) over what is believed of each lot's life, of the use, and of how much harder or easier
 * on the store the coming weeks are than those behind: log-normal, one for all lots, since they stand in one winter. Lives of
 * several lots are taken as independent.
 *
 * @param beliefs  of each lot, by `lifePosterior`
 * @param use      of `householdUse`; null where nothing is known
 * @returns        200, always the same for the same beliefs
 * @source         docs/decisions/0011-how-long-a-lot-lasts.md
 */
export function scenariosOf(beliefs: readonly LifeBelief[], use: HouseholdUse | null): readonly Scenario[] {
  return evenSpread(scenarioCount, beliefs.length + 2).map(([used = 0.5, harder = 0.5, ...shares]) => ({
    livesDays: beliefs.map((belief, lot) => lifeDaysAt(belief, shares[lot] ?? 0.5)),
    ahead: Math.exp(lossModel.aheadSpread.value * normalQuantile(harder)),
    piecesPerDay: use ? piecesPerDayAt(use, used) : 0,
  }));
}
