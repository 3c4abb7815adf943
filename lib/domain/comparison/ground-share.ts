import { areaCm2, type Footprint, subtract } from '../ground/footprint';

/** Ground treated so far counts as treated, and as far short of it as not: beds wander when they are dug [share]. */
const most = 0.8;

/**
 * Whether some pieces cover a planting's ground, as good as none of it, or a part.
 *
 * @param ground  the planting's [cm]
 * @param pieces  of the same frame, in any order; they may overlap
 * @returns       'all' from four fifths of the area on, 'none' up to a fifth
 * @source        four fifths: common practice
 * @example       a ground of 100 × 100 and a piece over 90 of its columns → 'all'
 */
export function groundShare(ground: Footprint, pieces: readonly Footprint[]): 'all' | 'part' | 'none' {
  const bare = subtract(ground, pieces).reduce((sum, piece) => sum + areaCm2(piece), 0);
  const share = 1 - bare / areaCm2(ground);
  if (share >= most) return 'all';
  return share <= 1 - most ? 'none' : 'part';
}
