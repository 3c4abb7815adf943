import type { SoilFigures } from '../catalogue/soils';
import { runningShares } from '../quantity/running-shares';
import { type Span, spanOf } from '../quantity/span';
import { type SoilMove, soilMoves } from './soil-moves';
import { type TrenchLayout, type TrenchOrder, type TrenchPlan, trenchPlan } from './trench-plan';

type Parts = { readonly [Part in SoilMove['kind']]: Span | null };

export type Carrying = {
  readonly layout: TrenchLayout;
  /** The first trench's soil, what is turned at the far end, and the ordinary throws [m·kg]; null where the weight is not known. */
  readonly metreKg: Parts;
  /** What one layout asks and the other does not: opening and turn, without the throws [m·kg]. */
  readonly carriedMetreKg: Span | null;
  /** The same in litres as they lie, times metres: known for any soil. */
  readonly carriedLitreMetres: number;
};
export type LessCarrying = {
  readonly less: TrenchLayout | 'equal';
  readonly straightThrough: Carrying;
  readonly twoHalves: Carrying;
};

/**
 * The carrying that a plan asks: weight of soil times its way, in metre-kilograms.
 *
 * Method: each top spit's weight as it lies × the distance between the middles of the trench it leaves and the one it fills.
 * The ordinary throw, one trench back, is counted apart; but for an adjusted trench it is the same in both layouts. Lifting is
 * not counted.
 *
 * @param plan  any plan; without an opened trench nothing is carried
 * @param soil  weight as it lies, from least to most, or null [g/L]
 * @returns     whole metre-kilograms ≥ 0; opening and turn sum to what is carried
 * @throws RangeError on an upturned or negative range
 * @source      weight × distance
 * @example     6 trenches of 120 × 60 × 25 cm, 1,000 g/L, straight through → 180 kg × 3 m = 540 m·kg carried
 */
export function carryingOf(plan: TrenchPlan, soil: SoilFigures): Carrying {
  const moves = soilMoves(plan);
  const kinds = ['opening', 'turn', 'throw'] as const;
  const mlCm = kinds.map((kind) => sumOf(moves.filter((move) => move.kind === kind)));
  const { inPlaceLeastGPerL: least, inPlaceMostGPerL: most } = soil;
  // Doubled, half centimetres are whole: 2 × 10⁸ mL·cm·g/L are a metre-kilogram.
  const partOf = (at: number) =>
    spanOf(
      least,
      most,
      (gPerL) =>
        runningShares(
          mlCm.map((one) => 2 * one),
          (sum) => (sum * gPerL) / 2e8,
        )[at] ?? 0,
    );
  const [opening, turn, thrown] = [partOf(0), partOf(1), partOf(2)];
  return {
    layout: plan.order.layout,
    metreKg: { opening, turn, throw: thrown },
    carriedMetreKg: opening && turn && { least: opening.least + turn.least, most: opening.most + turn.most },
    carriedLitreMetres: ((mlCm[0] ?? 0) + (mlCm[1] ?? 0)) / 1e5,
  };
}

function sumOf(moves: readonly SoilMove[]): number {
  return moves.reduce((sum, { volumeMl, distanceCm }) => sum + volumeMl * distanceCm, 0);
}

/**
 * Which layout asks less carrying of one bed, with the figures of both.
 *
 * Method: what each carries beyond the ordinary throws; by volume and way, so that it is answered for any soil.
 *
 * @param order  as for `trenchPlan`; its layout is passed over
 * @param soil   as for `carryingOf`
 * @returns      the layout that carries less, or equal, and both
 * @throws RangeError as `trenchPlan`
 * @source       weight × distance
 * @example      bed 120 × 360 → two-halves (0.6 m each way against 3 m); bed 900 × 120 in trenches of 900 → straight-through
 */
export function lessCarrying(order: Omit<TrenchOrder, 'layout'>, soil: SoilFigures): LessCarrying {
  const straightThrough = carryingOf(trenchPlan({ ...order, layout: 'straight-through' }), soil);
  const twoHalves = carryingOf(trenchPlan({ ...order, layout: 'two-halves' }), soil);
  const by = straightThrough.carriedLitreMetres - twoHalves.carriedLitreMetres;
  return { less: by === 0 ? 'equal' : by < 0 ? 'straight-through' : 'two-halves', straightThrough, twoHalves };
}
