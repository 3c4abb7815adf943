import type { Turn, TurnReason } from '../rotation/turn';
import { type DressingRate, needOf } from './need-of';
import { addUpStrewing, type Strewing } from './straw-and-meals';

/** One bed, or a plot that nobody has divided, in one season. */
export type GroundNeed = {
  readonly id: string;
  readonly areaCm2: number;
  readonly turn: Turn;
  /** Ground that a crop is planned on. */
  readonly plannedCm2: number;
  readonly strewing: Strewing;
};

/** What a holding's ground asks for in one season, and why [cm², g, barrow-loads]. */
export type HoldingNeed = {
  readonly loads: number;
  readonly massG: number;
  readonly assumedG: number;
  readonly areaCm2: number;
  readonly dueCm2: number;
  readonly unloggedCm2: number;
  /** Not manured, because the crop planned there takes none. */
  readonly skippedCm2: number;
  readonly notYetCm2: number;
  readonly plannedCm2: number;
  readonly strewing: Strewing;
};

export type SiteNeed = Omit<HoldingNeed, 'strewing'> & {
  readonly strewn: readonly { readonly key: string; readonly massG: number }[];
};

/**
 * What one holding's ground asks for, as its booking would reckon it.
 *
 * Method: `needOf` over its ground, loads rounded up once; areas by the reasons of their turns.
 *
 * @param grounds  of one holding, in one season
 * @param rate     how a dressing is measured
 * @returns        due, unlogged, skipped and not yet sum exactly to the area
 * @throws RangeError as `needOf`
 * @source         as `needOf`
 * @example        12 m² due at 5,000 g/m², 34 kg a load → 2 loads, 60,000 g
 */
export function holdingNeed(grounds: readonly GroundNeed[], rate: DressingRate): HoldingNeed {
  const need = needOf(
    grounds.map(({ id, turn }) => ({ id, ...turn })),
    rate,
  );
  const sum = (of: (ground: GroundNeed) => number) => grounds.reduce((all, ground) => all + of(ground), 0);
  const because = (code: TurnReason['code']) =>
    sum(({ turn }) => turn.reasons.reduce((all, one) => all + (one.code === code ? one.areaCm2 : 0), 0));
  return {
    loads: need.loads,
    massG: need.grounds.reduce((all, { massG }) => all + massG, 0),
    assumedG: need.grounds.reduce((all, { assumedG }) => all + assumedG, 0),
    areaCm2: sum(({ areaCm2 }) => areaCm2),
    dueCm2: because('due'),
    unloggedCm2: because('unlogged'),
    skippedCm2: because('crop-takes-none'),
    notYetCm2: because('not-yet'),
    plannedCm2: sum(({ plannedCm2 }) => plannedCm2),
    strewing: addUpStrewing(grounds.map(({ strewing }) => strewing)),
  };
}

const summed = [
  'loads',
  'massG',
  'assumedG',
  'areaCm2',
  'dueCm2',
  'unloggedCm2',
  'skippedCm2',
  'notYetCm2',
  'plannedCm2',
] as const;

/**
 * What all holdings need together: their loads are added as each would book them.
 *
 * @returns  sums; straw and meals rounded once to whole grams, those that come to nothing left out
 * @example  two holdings of 2 and 3 loads → 5 loads
 */
export function siteNeed(holdings: readonly HoldingNeed[]): SiteNeed {
  const sums = Object.fromEntries(
    summed.map((key) => [key, holdings.reduce((all, holding) => all + holding[key], 0)]),
  ) as Record<(typeof summed)[number], number>;
  const strewn = [...addUpStrewing(holdings.map(({ strewing }) => strewing))]
    .map(([key, tenThousandthsG]) => ({ key, massG: Math.round(tenThousandthsG / 10_000) }))
    .filter(({ massG }) => massG > 0);
  return { ...sums, strewn };
}
