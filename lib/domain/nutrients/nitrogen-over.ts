import { type CalendarDate, withinYears } from '../calendar/calendar-date';
import { hectareLimit } from '../catalogue/nitrogen-limits';
import { cellsOf, liesIn } from '../ground/cells';
import { areaCm2, type Footprint } from '../ground/footprint';
import { wholeFrom } from '../quantity/checked';

/**
 * Nitrogen of manure, compost or meal brought on to some ground; null where its content is not known. Bedding is no
 * manure.
 */
export type NitrogenDressing = {
  readonly footprint: Footprint;
  readonly on: CalendarDate;
  readonly nitrogenMgPerM2: number | null;
};

/** Ground that is alike throughout. */
export type NitrogenPiece = {
  readonly footprint: Footprint;
  /** The most that fell within any twelve months [mg/m²], and its first and last dressing. */
  readonly mgPerM2: number;
  readonly from: CalendarDate | null;
  readonly through: CalendarDate | null;
  /** The most that fell within any interval of the rotation, a year of it [mg/m²]. */
  readonly meanMgPerM2: number;
  /** Some dressing's content is not known, so these are the least it can be. */
  readonly unknown: boolean;
};

export type NitrogenOver = {
  readonly pieces: readonly NitrogenPiece[];
  readonly limitMgPerM2: number;
  /** Of the worst piece. */
  readonly worstMgPerM2: number;
  readonly worstMeanMgPerM2: number;
  /** The worst piece as a multiple of the limit. */
  readonly timesLimit: number;
  /** The pieces' yearly means over the whole bed. */
  readonly bedMeanMgPerM2: number;
  readonly overCm2: number;
  /** Not over by what is known, but with a dressing whose content is not. */
  readonly unknownCm2: number;
  readonly withinCm2: number;
};

/**
 * How the nitrogen brought on to a bed compares with the limit for any twelve months, by area.
 *
 * Method: the bed is cut along the dressings' edges; on each piece the heaviest twelve months begin with some dressing,
 * so those are tried. Twelve months end with the eve of the same day next year.
 *
 * @param ground         the bed [cm]
 * @param dressings      of its frame, in any order; nitrogen whole number ≥ 0 or null [mg/m²]
 * @param intervalYears  the manuring interval, over which a mean is taken; whole number ≥ 1
 * @param limitKgPerHa   whole number ≥ 1 [kg/ha]
 * @returns              over, unknown and within sum exactly to the bed [cm²]
 * @throws RangeError    on anything else
 * @source               Nitrate Pollution Prevention Regulations 2015, SI 2015/668, regulation 8(1)
 * @example              60,000 mg/m² in one dressing, interval 3 → 2.4 times 250 kg/ha; 20,000 mg/m² a year on the mean
 */
export function nitrogenOver(
  ground: Footprint,
  dressings: readonly NitrogenDressing[],
  intervalYears: number,
  limitKgPerHa: number = hectareLimit.kgPerHa,
): NitrogenOver {
  wholeFrom(1, intervalYears);
  const limitMgPerM2 = wholeFrom(1, limitKgPerHa) * 100;
  for (const { nitrogenMgPerM2 } of dressings) wholeFrom(0, nitrogenMgPerM2 ?? 0);
  const pieces = cellsOf(
    ground,
    dressings.map(({ footprint }) => footprint),
  ).cells.map((cell) => pieceOf(cell, dressings, intervalYears));
  const area = (wanted: (piece: NitrogenPiece) => boolean) =>
    pieces.filter(wanted).reduce((sum, { footprint }) => sum + areaCm2(footprint), 0);
  const isOver = ({ mgPerM2 }: NitrogenPiece) => mgPerM2 > limitMgPerM2;
  const worstMgPerM2 = Math.max(...pieces.map(({ mgPerM2 }) => mgPerM2));
  return {
    pieces,
    limitMgPerM2,
    worstMgPerM2,
    worstMeanMgPerM2: Math.max(...pieces.map(({ meanMgPerM2 }) => meanMgPerM2)),
    timesLimit: worstMgPerM2 / limitMgPerM2,
    bedMeanMgPerM2: Math.round(
      pieces.reduce((sum, { footprint, meanMgPerM2 }) => sum + meanMgPerM2 * areaCm2(footprint), 0) / areaCm2(ground),
    ),
    overCm2: area(isOver),
    unknownCm2: area((piece) => !isOver(piece) && piece.unknown),
    withinCm2: area((piece) => !isOver(piece) && !piece.unknown),
  };
}

function pieceOf(cell: Footprint, dressings: readonly NitrogenDressing[], intervalYears: number): NitrogenPiece {
  const here = dressings
    .filter(({ footprint }) => liesIn(cell, footprint))
    .sort((a, b) => (a.on < b.on ? -1 : Number(a.on > b.on)));
  const worst = heaviest(here, hectareLimit.years);
  return {
    footprint: cell,
    mgPerM2: sumOf(worst),
    from: worst[0]?.on ?? null,
    through: worst.at(-1)?.on ?? null,
    meanMgPerM2: Math.round(sumOf(heaviest(here, intervalYears)) / intervalYears),
    unknown: here.some(({ nitrogenMgPerM2 }) => nitrogenMgPerM2 === null),
  };
}

/** The dressings of the heaviest run of so many years; the earliest of equals. */
function heaviest(inOrder: readonly NitrogenDressing[], years: number): readonly NitrogenDressing[] {
  return inOrder
    .map((first) => inOrder.filter(({ on }) => withinYears(first.on, on, years)))
    .reduce<readonly NitrogenDressing[]>((most, run) => (sumOf(run) > sumOf(most) ? run : most), []);
}

function sumOf(dressings: readonly NitrogenDressing[]): number {
  return dressings.reduce((sum, { nitrogenMgPerM2 }) => sum + (nitrogenMgPerM2 ?? 0), 0);
}
