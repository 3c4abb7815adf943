import { type Footprint, overlap } from './footprint';

/** A footprint cut into a grid along the edges of other footprints; each cell lies wholly in or out of each of them. */
export type CellGrid = { readonly columns: number; readonly rows: number; readonly cells: readonly Footprint[] };

/**
 * Cut a footprint along the edges of others, so that what is true of a cell is true of all of it.
 *
 * @param ground  the footprint to cut
 * @param others  footprints of the same frame; those that lie apart change nothing
 * @returns       cells row by row; their areas sum exactly to the ground's
 * @example       a 100 × 100 ground and one covering its left half → two columns, one row
 */
export function cellsOf(ground: Footprint, others: readonly Footprint[]): CellGrid {
  const within = others.map((other) => overlap(ground, other)).filter((shared) => shared !== null);
  // Most beds keep their shape for years: nothing is to be cut.
  if (within.every(({ widthCm, lengthCm }) => widthCm === ground.widthCm && lengthCm === ground.lengthCm))
    return { columns: 1, rows: 1, cells: [ground] };
  const xs = cuts([ground, ...within].flatMap(({ xCm, widthCm }) => [xCm, xCm + widthCm]));
  const ys = cuts([ground, ...within].flatMap(({ yCm, lengthCm }) => [yCm, yCm + lengthCm]));
  const cells = ys.slice(0, -1).flatMap((yCm, row) =>
    xs.slice(0, -1).map((xCm, column) => ({
      xCm,
      yCm,
      widthCm: (xs[column + 1] ?? xCm) - xCm,
      lengthCm: (ys[row + 1] ?? yCm) - yCm,
    })),
  );
  return { columns: xs.length - 1, rows: ys.length - 1, cells };
}

/** Whether a cell of a grid cut along a footprint's edges lies in it. */
export function liesIn(cell: Footprint, ground: Footprint): boolean {
  return overlap(cell, ground) !== null;
}

/**
 * Which marked cells belong to marked ground at least so wide and so long: what is left when narrow strips are left out.
 *
 * Method: morphological opening by a rectangle, on the grid: a cell stays when some block of marked cells around it
 * measures at least the given width and length. Cutting the ground otherwise changes no answer.
 *
 * @param marked  one truth for each cell, row by row
 * @returns       one truth for each cell; never true where `marked` is not
 * @source        J. Serra, Image Analysis and Mathematical Morphology, 1982 (opening); from memory
 */
export function openCells(grid: CellGrid, marked: readonly boolean[], widthCm: number, lengthCm: number): boolean[] {
  const kept = marked.map(() => false);
  for (let top = 0; top < grid.rows; top++)
    for (let left = 0; left < grid.columns; left++) keepBlocksFrom(grid, marked, kept, top, left, widthCm, lengthCm);
  return kept;
}

function keepBlocksFrom(
  grid: CellGrid,
  marked: readonly boolean[],
  kept: boolean[],
  top: number,
  left: number,
  widthCm: number,
  lengthCm: number,
): void {
  let widest = grid.columns;
  let long = 0;
  for (let row = top; row < grid.rows; row++) {
    let wide = 0;
    let column = left;
    for (; column < widest && marked[row * grid.columns + column]; column++) wide += grid.cells[column]?.widthCm ?? 0;
    widest = column;
    if (wide < widthCm) return;
    long += grid.cells[row * grid.columns]?.lengthCm ?? 0;
    if (long >= lengthCm) keepBlock(grid, kept, top, row, left, widest);
  }
}

function keepBlock(grid: CellGrid, kept: boolean[], top: number, bottom: number, left: number, right: number): void {
  for (let row = top; row <= bottom; row++)
    for (let column = left; column < right; column++) kept[row * grid.columns + column] = true;
}

function cuts(values: readonly number[]): number[] {
  return [...new Set(values)].sort((a, b) => a - b);
}
