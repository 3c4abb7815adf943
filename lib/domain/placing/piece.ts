import type { Point } from '../ground/segment';

/** From one distance along a path to another, measured from where it was begun [whole cm]. */
export type Stretch = { readonly fromCm: number; readonly toCm: number };

/** A straight piece of path. Its ends stand in a fixed order, so that nothing depends on which way it was drawn. */
export type Piece = {
  readonly a: Point;
  readonly b: Point;
  readonly lengthCm: number;
  /** What of it a lorry can drive, from a. */
  readonly lorry: readonly Stretch[];
};
