import type { Spacing } from '../catalogue/spacings';
import type { Footprint } from '../ground/footprint';
import { wholeFrom } from '../quantity/checked';

/** How far apart plants stand [cm]. */
export type Apart = { readonly rowsCm: number; readonly inRowCm: number };

export type PlantsOn = { readonly rows: number; readonly inRow: number; readonly plants: number };

/**
 * Printed distances as whole centimetres: the middle of what is printed.
 *
 * @returns  whole numbers ≥ 1 [cm]
 * @throws RangeError where the distances are none
 * @source   an inch is 2.54 cm exactly: Weights and Measures Act 1985, Schedule 1
 * @example  rows 12 to 18 inches, 2 to 3 in the row → 38 and 6 cm
 */
export function apartOf({ rowsLeast, rowsMost, inRowLeast, inRowMost, printedIn }: Spacing): Apart {
  const cm = printedIn === 'inches' ? 2.54 : 1;
  const middle = (least: number, most: number) => wholeFrom(1, Math.round(((least + most) / 2) * cm));
  return { rowsCm: middle(rowsLeast, rowsMost), inRowCm: middle(inRowLeast, inRowMost) };
}

/**
 * How many plants a footprint takes, row by row.
 *
 * Method: each row, and each plant in it, has its own distance of ground, half to either side, so that two beds side by side keep it
 * too; what is left over stays bare. Ground too narrow for one is one row, or one plant: a path gives it air.
 *
 * @param footprint  whole centimetres
 * @param apart      whole numbers ≥ 1 [cm]
 * @param along      which way the rows run: along the length (y) or the width (x) of the footprint
 * @returns          whole numbers ≥ 1; plants = rows × inRow
 * @throws RangeError on distances that are none
 * @source           common practice
 * @example          120 × 360 cm, rows of 30 cm along the length, 10 cm in the row → 4 rows of 36, 144 plants
 */
export function plantsOn(footprint: Footprint, apart: Apart, along: 'length' | 'width'): PlantsOn {
  const [across, down] =
    along === 'length' ? [footprint.widthCm, footprint.lengthCm] : [footprint.lengthCm, footprint.widthCm];
  const rows = Math.max(1, Math.floor(across / wholeFrom(1, apart.rowsCm)));
  const inRow = Math.max(1, Math.floor(down / wholeFrom(1, apart.inRowCm)));
  return { rows, inRow, plants: wholeFrom(1, rows * inRow) };
}
