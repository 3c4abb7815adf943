import type { Season } from '../calendar/season-of';
import { cellsOf, liesIn } from '../ground/cells';
import { areaCm2, type Footprint } from '../ground/footprint';
import { type Balance, balanceOf } from './balance';
import type { DressingOn } from './dressing-on';
import type { Supply } from './supply';

/** A crop on some of the bed in the season. */
export type CropOnGround = { readonly footprint: Footprint; readonly cropKey: string };

/** Ground of a bed that had the same dressings and bears the same crop. */
export type FedPiece = {
  readonly areaCm2: number;
  /** Null where no crop is on record. */
  readonly cropKey: string | null;
  /** This season's dressings on it, by the ids of their work. */
  readonly workIds: readonly string[];
  readonly balance: Balance;
};

const noCrop = '';

/**
 * What each piece of a bed is fed in a season, beside what its crop demands and removes.
 *
 * Method: the bed is cut along the edges of its dressings and crops; pieces alike in both are gathered. Last year's
 * nitrogen is the total of that season's dressings there; it is known to be none only where earlier work is on record. Where
 * two crops share ground, each has a line with all of it.
 *
 * @param dressings  of the frame, of any season, by `dressingOn`
 * @param crops      of the season, on parts of the bed
 * @returns          pieces, the largest first; but for shared ground their areas sum to the bed's
 * @source           as `balanceOf`
 * @example          manure on half of a bed of leeks → two pieces of leeks, one with 2,500 mg/m² and one with none
 */
export function bedBalances(given: {
  readonly ground: Footprint;
  readonly season: Season;
  readonly dressings: readonly DressingOn[];
  readonly crops: readonly CropOnGround[];
}): FedPiece[] {
  const { ground, dressings, crops } = given;
  const edges = [...dressings.map(({ work }) => work), ...crops].map(({ footprint }) => footprint);
  const pieces = new Map<string, FedPiece>();
  for (const cell of cellsOf(ground, edges).cells)
    for (const piece of piecesOf(cell, given)) {
      const key = JSON.stringify([piece.cropKey, piece.workIds, piece.balance.lastYearMgPerM2]);
      const before = pieces.get(key);
      pieces.set(key, { ...piece, areaCm2: piece.areaCm2 + (before?.areaCm2 ?? 0) });
    }
  return [...pieces.values()].sort((a, b) => b.areaCm2 - a.areaCm2);
}

function piecesOf(
  cell: Footprint,
  { season, dressings, crops }: Pick<Parameters<typeof bedBalances>[0], 'season' | 'dressings' | 'crops'>,
): FedPiece[] {
  const here = dressings.filter(({ work }) => liesIn(cell, work.footprint));
  const now = here.filter(({ work }) => work.season === season);
  const lastYear = totalBefore(here, season);
  const standing = [...new Set(crops.filter((one) => liesIn(cell, one.footprint)).map(({ cropKey }) => cropKey))];
  return (standing.length ? standing : [null]).map((cropKey) => ({
    areaCm2: areaCm2(cell),
    cropKey,
    workIds: now.map(({ work }) => work.id),
    balance: balanceOf(
      cropKey ?? noCrop,
      now.map(({ supply }) => supply ?? unknown),
      lastYear,
    ),
  }));
}

// Ground on which nobody ever wrote anything down may have had anything.
function totalBefore(here: readonly DressingOn[], season: Season): number | null {
  if (!here.some(({ work }) => work.season < season)) return null;
  return here
    .filter(({ work }) => work.season === season - 1)
    .reduce<number | null>((sum, { supply }) => {
      const brought = supply?.nitrogen?.mgPerM2 ?? null;
      return sum === null || brought === null ? null : sum + brought;
    }, 0);
}

const unknown: Supply = { nitrogen: null, phosphate: null, potash: null, magnesia: null, firstYear: null, reasons: [] };
