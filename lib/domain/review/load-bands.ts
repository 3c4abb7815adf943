import { wholeFrom } from '../quantity/checked';

/** How many holdings had so many loads, both ends included; no end where it is open. */
export type LoadBand = {
  readonly fromLoads: number;
  readonly toLoads: number | null;
  readonly holdings: number;
};

/** Where one band ends [loads]; the last is open. Common practice. */
const ends = [0, 2, 5, 10] as const;

/**
 * How loads spread over holdings: none, one or two, three to five, and so on, without telling what any one of them had.
 *
 * Method: a band that holds somebody but fewer than so many takes the next one in; what is left over at the end joins the band before it.
 *
 * @param loads  of each holding, those with none among them; whole numbers ≥ 0
 * @param least  so many holdings stand in a band at least, if any; 1 where nobody need be hidden
 * @returns      bands that follow on one another and begin at 0; their holdings add up to all of them. Null where there are fewer than `least`
 * @throws RangeError on loads that are no whole number ≥ 0, or a least below 1
 * @source       three at least: common practice of disclosure control
 * @example      loadBands([0, 0, 0, 1, 2, 2, 4], 3) → 0: three; 1 and more: four
 */
export function loadBands(loads: readonly number[], least: number): LoadBand[] | null {
  wholeFrom(1, least);
  for (const one of loads) wholeFrom(0, one);
  if (loads.length < least) return null;
  const bands: LoadBand[] = [];
  let fromLoads = 0;
  for (const toLoads of [...ends, null]) {
    const holdings = loads.filter((one) => one >= fromLoads && (toLoads === null || one <= toLoads)).length;
    if (toLoads !== null && holdings > 0 && holdings < least) continue;
    bands.push({ fromLoads, toLoads, holdings });
    fromLoads = (toLoads ?? 0) + 1;
  }
  return withoutRest(bands, least);
}

// The last band holds enough, and no open end stands where nobody is.
function withoutRest(bands: readonly LoadBand[], least: number): LoadBand[] {
  const before = bands.slice(0, -1);
  const [last, previous] = [bands.at(-1), before.at(-1)];
  if (!last || !previous) return [...bands];
  if (last.holdings === 0) return withoutRest(before, least);
  if (last.holdings >= least) return [...bands];
  const joined = { ...last, fromLoads: previous.fromLoads, holdings: previous.holdings + last.holdings };
  return withoutRest([...before.slice(0, -1), joined], least);
}
