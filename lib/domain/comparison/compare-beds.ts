import type { BedResult, Question } from './bed-result';
import { comparison, type Contrast, type Treated } from './comparison';
import { shownCells } from './shown-cells';
import { twoFigures } from './two-figures';
import { varietiesAlone } from './varieties-alone';

/** Beds of one group, as they are told. All figures to two figures [g/m²]. */
export type ToldBeds = {
  readonly key: string;
  /** One for each plot, by size. */
  readonly values: readonly number[];
  /** The reader's own plots, told to nobody else. */
  readonly own: readonly number[];
  readonly mean: number | null;
  readonly low: number | null;
  readonly high: number | null;
  /** The mean, drawn towards that of all groups. */
  readonly estimate: number | null;
};

export type ToldContrast = Pick<Contrast, 'first' | 'second' | 'by' | 'counts' | 'verdict' | 'level'> & {
  readonly low: number | null;
  readonly high: number | null;
  readonly hiddenBelow: number | null;
};

export type Compared = {
  readonly groups: readonly ToldBeds[];
  readonly contrasts: readonly ToldContrast[];
  readonly apart: Pick<ToldBeds, 'values' | 'own'>;
};

/**
 * What beds gave, by what a question tells them apart by, as far as it may be told to one reader.
 *
 * Method: groups by `shownCells`; then, where one variety is asked for, its beds alone. Beds of one plot that belong to one group are averaged,
 * since they share its soil and its gardener, and everything is rounded before it is reckoned with: no mean knows more than the values beside it.
 *
 * @param beds     of one crop, and of one season unless seasons are asked about; the reader's own may be unshared, and are then told beside the others
 * @param variety  one of `varietiesAlone`, or null
 * @returns        groups in the order of `shownCells`; contrasts of each with each that follows
 * @throws RangeError on a variety that can't be looked at alone
 * @source         `shownCells`, `comparison`
 * @example        double dug 2,100, 2,500 and 2,900, not known 1,800 of one neighbour → nothing: three could be found from the total
 */
export function compareBeds(beds: readonly BedResult[], question: Question, variety: string | null): Compared {
  const shared = beds.filter(({ isShared }) => isShared);
  if (variety !== null && !varietiesAlone(shared, question).includes(variety))
    throw new RangeError(`not to be looked at alone: ${variety}`);
  const keyOf = ({ groupOf }: BedResult) => groupOf[question];
  const { shown, apart } = shownCells(shared, keyOf);
  const alone = (some: readonly BedResult[]) =>
    some.filter(({ groupOf }) => variety === null || groupOf.variety === variety);
  const cells = shown.map((cell) => ({ ...cell, beds: alone(cell.beds) })).filter((cell) => cell.beds.length > 0);
  const told = cells.length ? comparison(cells.map(treatedOf)) : { groups: [], contrasts: [] };
  const own = alone(beds.filter(({ isOwn }) => isOwn));
  const ownIn = (isHere: (key: string | null) => boolean) => valuesOf(own.filter((bed) => isHere(keyOf(bed))));
  const keys = new Set<string | null>(cells.map(({ key }) => key));
  return {
    groups: told.groups.map(({ key, values, mean, interval, estimate }) => ({
      key,
      values: values.toSorted((a, b) => a - b),
      own: ownIn((one) => one === key),
      mean: rounded(mean),
      low: rounded(interval && Math.max(0, interval.low)),
      high: rounded(interval && interval.high),
      estimate: rounded(estimate),
    })),
    contrasts: told.contrasts.map(({ interval, hiddenBelow, ...contrast }) => ({
      ...contrast,
      low: rounded(interval && interval.low),
      high: rounded(interval && interval.high),
      hiddenBelow: rounded(hiddenBelow),
    })),
    apart: { values: valuesOf(alone(apart)), own: ownIn((key) => !keys.has(key)) },
  };
}

function treatedOf({ key, beds }: { readonly key: string; readonly beds: readonly BedResult[] }): Treated {
  return { key, observations: plotsOf(beds) };
}

function valuesOf(beds: readonly BedResult[]): number[] {
  return plotsOf(beds)
    .map(({ value }) => value)
    .toSorted((a, b) => a - b);
}

// A plot that changed hands is two: each holder's own.
function plotsOf(beds: readonly BedResult[]) {
  const plotOf = ({ holdingId, plotId }: BedResult) => `${holdingId} ${plotId}`;
  return [...new Set(beds.map(plotOf))].map((plot) => {
    const here = beds.filter((bed) => plotOf(bed) === plot);
    const mean = here.reduce((sum, { gPerM2 }) => sum + gPerM2, 0) / here.length;
    const holder = here.some(({ isOwn }) => isOwn) ? null : (here[0]?.holdingId ?? null);
    return { plot, holder, value: twoFigures(mean) };
  });
}

function rounded(value: number | null): number | null {
  return value === null ? null : twoFigures(value);
}
