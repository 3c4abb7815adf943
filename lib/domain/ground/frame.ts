import type { Point } from './segment';

/**
 * A plot's own axes on the site drawing: where they begin [cm east, cm down the page], and how far the first axis is
 * turned clockwise from the page's right [hundredths of a degree].
 */
export type Frame = { readonly originXCm: number; readonly originYCm: number; readonly bearingCentideg: number };

/**
 * A point of a frame, on the site drawing. For drawing and for the distances between plots; never for areas, which are
 * exact only within a frame.
 *
 * @param frame  origin in whole centimetres, bearing in whole hundredths of a degree
 * @param point  in the frame [cm]
 * @returns      on the site, x to the right and y down the page [cm, not rounded]
 * @throws RangeError on values that are not whole numbers
 * @example toSite({ originXCm: 1000, originYCm: 0, bearingCentideg: 9000 }, { xCm: 100, yCm: 0 }) → 1000, 100
 */
export function toSite(frame: Frame, point: Point): Point {
  const { originXCm, originYCm, bearingCentideg } = frame;
  if (![originXCm, originYCm, bearingCentideg].every(Number.isSafeInteger))
    throw new RangeError('a frame is given in whole numbers');
  const turn = (bearingCentideg * Math.PI) / 18_000;
  return {
    xCm: originXCm + point.xCm * Math.cos(turn) - point.yCm * Math.sin(turn),
    yCm: originYCm + point.xCm * Math.sin(turn) + point.yCm * Math.cos(turn),
  };
}
