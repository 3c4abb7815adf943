import { describe, expect, test } from 'vitest';
import { cornersOf } from '@/lib/domain/ground/polygon';
import { networkOf } from '@/lib/domain/placing/network';
import { placeHeap } from '@/lib/domain/placing/place-heap';

// The tree of Fig. 2.1 in the chapter on the p-median problem of Location Science, Springer, 2015 (read in a copy; publisher and
// year from memory): six places with a total demand of 1,000. Published: tip E (250) is folded into C, F into D, B into D, whose 525 are more than half, so that D is the
// 1-median. The demands follow from the folding (A 100, B 150, C 125, D 175, E 250, F 200). The lengths 5, 6, 3, 4, 7 are
// printed; which edge has which (A–C, B–D, C–D, C–E, D–F) is our reading of them. D is best whatever they are.
const demands = { A: 100, B: 150, C: 125, D: 175, E: 250, F: 200 };

/** The tree laid out in metres: C and D side by side, their tips above and below them. */
function treeWith(lengthsM: { ac: number; bd: number; cd: number; ce: number; df: number }) {
  const { ac, bd, cd, ce, df } = lengthsM;
  const at = (xM: number, yM: number) => ({ xCm: xM * 100, yCm: yM * 100 });
  const places = { A: at(0, -ac), B: at(cd, -bd), C: at(0, 0), D: at(cd, 0), E: at(0, ce), F: at(cd, df) };
  const edges = [
    [places.A, places.C],
    [places.C, places.D],
    [places.C, places.E],
    [places.B, places.D],
    [places.D, places.F],
  ] as const;
  const network = networkOf({
    paths: edges.map((points) => ({ points, lorry: 'none' })),
    // Plots of 20 cm about their places: each is reached from its own, without a step over the ground.
    plots: Object.entries(places).map(([id, { xCm, yCm }]) => ({
      id,
      frame: { originXCm: xCm - 10, originYCm: yCm - 10, bearingCentideg: 0 },
      polygon: cornersOf({ xCm: 0, yCm: 0, widthCm: 20, lengthCm: 20 }),
    })),
    dropPoints: Object.entries(places).map(([id, place]) => ({ id, at: place })),
  });
  return placeHeap({ network, loads: new Map(Object.entries(demands)), allowed: 'anywhere' });
}

describe('the 1-median of the published tree', () => {
  const printed = { ac: 5, bd: 6, cd: 3, ce: 4, df: 7 };

  test('is D', () => expect(treeWith(printed).best?.dropPointId).toBe('D'));

  // By the published rule of folding, D has it by its demands alone.
  test.each([
    { ac: 7, bd: 3, cd: 4, ce: 6, df: 5 },
    { ac: 4, bd: 7, cd: 6, ce: 5, df: 3 },
    { ac: 50, bd: 1, cd: 1, ce: 60, df: 1 },
  ])('is D with any lengths: %j', (lengths) => expect(treeWith(lengths).best?.dropPointId).toBe('D'));

  // Derived from our reading of the lengths, not published: the totals of all six in metres.
  test('derived: loaded metres from each', () => {
    const { dropPoints } = treeWith(printed);
    expect(new Map(dropPoints.map(({ id, loadedCm }) => [id, loadedCm / 100]))).toEqual(
      new Map(Object.entries({ A: 9375, B: 9425, C: 5375, D: 5225, E: 7375, F: 9425 })),
    );
  });
});
