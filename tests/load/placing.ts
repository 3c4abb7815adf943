import { cornersOf } from '@/lib/domain/ground/polygon';
import type { SitePath } from '@/lib/domain/placing/drawn-paths';
import { networkOf } from '@/lib/domain/placing/network';
import { placeHeap } from '@/lib/domain/placing/place-heap';
import { growing, type Measured, sideBySide } from './side-by-side';

const widthCm = 1000;
const perRow = 25;

/**
 * All that the page of a heap's place works out, while it is served: the network of ever larger sites, the place for the heap,
 * to proof, and three drop points compared with every plot's way; beside plain sorts.
 */
export function measurePlacing() {
  const rows = [50, 100, 200, 500].map(placingAmong);
  return growing(
    'Heap placing: network, best place and three drop points compared',
    'a plain sort of every way compared',
    'plots',
    rows,
  );
}

/** Rows of 25 plots on both sides of a track each, and two tracks that cross them all. */
function placingAmong(count: number): Measured {
  const plots = Array.from({ length: count }, (_, at) => {
    const [row, along] = [Math.floor(at / perRow), at % perRow];
    const originYCm = Math.floor(row / 2) * 5000 + (row % 2 ? 2800 : 200);
    return {
      id: `plot-${at}`,
      frame: { originXCm: along * widthCm + 300, originYCm, bearingCentideg: (at * 37) % 100 },
      polygon: cornersOf({ xCm: 0, yCm: 0, widthCm, lengthCm: 2000 }),
    };
  });
  const deepCm = Math.ceil(count / perRow / 2) * 5000;
  const [left, right] = [0, perRow * widthCm + 600];
  const lineOf = (x1: number, y1: number, x2: number, y2: number): SitePath => ({
    points: [
      { xCm: x1, yCm: y1 },
      { xCm: x2, yCm: y2 },
    ],
    lorry: 'whole',
  });
  const tracks = Array.from({ length: deepCm / 5000 }, (_, at) =>
    lineOf(left, at * 5000 + 2500, right, at * 5000 + 2550),
  );
  const paths = [...tracks, lineOf(left, 0, left, deepCm), lineOf(right, 0, right - 40, deepCm)];
  const loads = new Map(plots.map(({ id }, at) => [id, (at * 7) % 13]));
  const dropPoints = [0, 1, 2].map((nth) => ({
    id: `drop-${nth}`,
    at: { xCm: nth * 9000 + 700, yCm: 2500 + nth * 10 },
  }));
  const numbers = Array.from({ length: count * count }, (_, at) => (at * 7919) % 1_000_003);
  return sideBySide(
    count,
    () => placeHeap({ network: networkOf({ paths, plots, dropPoints }), loads, allowed: 'lorry' }),
    () => numbers.toSorted((a, b) => a - b),
  );
}
