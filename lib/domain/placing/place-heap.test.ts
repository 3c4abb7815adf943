import { describe, expect, test } from 'vitest';
import { cornersOf } from '../ground/polygon';
import type { SitePath } from './drawn-paths';
import { type DropPoint, networkOf } from './network';
import { type Allowed, placeHeap } from './place-heap';

const at = (xCm: number, yCm: number) => ({ xCm, yCm });
const line = (from: readonly [number, number], to: readonly [number, number], lorry: SitePath['lorry'] = 'none') => ({
  points: [at(...from), at(...to)],
  lorry,
});
/** A plot of 2 × 2 m by its middle. */
const plot = (id: string, xCm: number, yCm: number) => ({
  id,
  frame: { originXCm: xCm - 100, originYCm: yCm - 100, bearingCentideg: 0 },
  polygon: cornersOf({ xCm: 0, yCm: 0, widthCm: 200, lengthCm: 200 }),
});
const drop = (id: string, xCm: number, yCm: number): DropPoint => ({ id, at: at(xCm, yCm) });
type Site = {
  paths?: readonly SitePath[];
  plots?: Parameters<typeof networkOf>[0]['plots'];
  dropPoints?: readonly DropPoint[];
};
const place = (site: Site, loads: Record<string, number>, allowed: Allowed = 'anywhere') =>
  placeHeap({
    network: networkOf({ paths: [], plots: [], dropPoints: [], ...site }),
    loads: new Map(Object.entries(loads)),
    allowed,
  });

// A track of 100 m with plots 3 m off it at either end, and a third beside its middle.
const track = {
  paths: [line([0, 0], [10_000, 0])],
  plots: [plot('west', 0, 400), plot('middle', 5000, 400), plot('east', 10_000, 400)],
};

describe('one track', () => {
  test('the end with more loads, and every way from there', () => {
    const { best, basis, proof } = place(track, { west: 3, east: 1 });
    expect(best?.at).toEqual(at(0, 0));
    expect([best?.loadedCm, best?.walkedCm]).toEqual([3 * 300 + 10_300, 2 * (3 * 300 + 10_300)]);
    expect(best?.plots).toEqual([
      { id: 'west', loads: 3, wayCm: 300, overGroundCm: 300, loadedCm: 900, code: 'by-path' },
      { id: 'middle', loads: 0, wayCm: 5300, overGroundCm: 300, loadedCm: 0, code: 'by-path' },
      { id: 'east', loads: 1, wayCm: 10_300, overGroundCm: 300, loadedCm: 10_300, code: 'by-path' },
    ]);
    expect([basis, proof]).toEqual(['paths', { code: 'nodes-suffice', places: 3 }]);
  });
  test('the middle, where the ends are alike', () =>
    expect(place(track, { west: 2, middle: 1, east: 2 }).best?.at).toEqual(at(5000, 0)));
  test('one load', () => expect(place(track, { east: 1 }).best).toMatchObject({ at: at(10_000, 0), loadedCm: 300 }));
  test('nothing to wheel: no place is better than another', () => {
    expect(place(track, {})).toMatchObject({ best: null, proof: { code: 'no-loads', places: 3 } });
    expect(place(track, { west: 0 }).best).toBeNull();
  });
});

describe('equally good places', () => {
  test('the one farther left, and the others are told', () => {
    const { best } = place(track, { west: 2, east: 2 });
    expect(best).toMatchObject({ at: at(0, 0), dropPointId: null });
    expect(best?.equallyGood).toEqual([at(5000, 0), at(10_000, 0)]);
  });
  test('rather where a drop point lies already', () => {
    const dropPoints = [drop('gate', 10_000, 0), drop('yard', 7000, 0)];
    expect(place({ ...track, dropPoints }, { west: 2, east: 2 }).best).toMatchObject({
      at: at(7000, 0),
      dropPointId: 'yard',
    });
  });
  test('but not where it is worse', () => {
    const dropPoints = [drop('gate', 10_000, 0)];
    expect(place({ ...track, dropPoints }, { west: 3, east: 2 }).best).toMatchObject({
      at: at(0, 0),
      dropPointId: null,
    });
  });
  test('of two drop points in one place the first by id', () => {
    const dropPoints = [drop('b', 0, 0), drop('a', 0, 0)];
    expect(place({ ...track, dropPoints }, { west: 1 }).best?.dropPointId).toBe('a');
  });
});

describe('the drop points that there are', () => {
  const dropPoints = [drop('east', 10_000, 0), drop('beside', 5000, -700)];
  test('compared, the best first, with what each costs beyond the best place', () => {
    const { dropPoints: compared, best } = place({ ...track, dropPoints }, { west: 3, east: 1 });
    expect(compared.map(({ id, loadedCm, overBestCm }) => [id, loadedCm, overBestCm])).toEqual([
      ['beside', 4 * (700 + 5000 + 300), 4 * 6000 - 11_200],
      ['east', 30_000 + 4 * 300, 31_200 - 11_200],
    ]);
    expect(best?.loadedCm).toBe(11_200);
    expect(compared[0]?.plots[0]).toMatchObject({ id: 'west', wayCm: 6000, overGroundCm: 1000, code: 'by-path' });
  });
  test('or nothing else is asked about', () =>
    expect(place({ ...track, dropPoints }, { west: 3, east: 1 }, 'drop-points')).toMatchObject({
      best: { at: at(5000, -700), dropPointId: 'beside', loadedCm: 24_000 },
      proof: { code: 'all-compared', places: 2 },
      dropPoints: [{ overBestCm: 0 }, { overBestCm: 7200 }],
    }));
});

describe('where a lorry can drive', () => {
  const withLorry = (lorry: SitePath['lorry']) => ({ ...track, paths: [line([0, 0], [10_000, 0], lorry)] });
  test('the end of the stretch that is nearest to the loads', () => {
    expect(place(withLorry({ fromCm: 8000, toCm: 9000 }), { west: 3 }, 'lorry').best?.at).toEqual(at(8000, 0));
    expect(place(withLorry({ fromCm: 0, toCm: 3100 }), { east: 3 }, 'lorry').best?.at).toEqual(at(3100, 0));
  });
  test('within the stretch where that is best', () =>
    expect(place(withLorry({ fromCm: 4000, toCm: 6000 }), { middle: 3 }, 'lorry').best?.at).toEqual(at(5000, 0)));
  test('nowhere', () => {
    const { best, proof, dropPoints } = place({ ...track, dropPoints: [drop('gate', 0, 0)] }, { west: 3 }, 'lorry');
    expect([best, proof]).toEqual([null, { code: 'no-place', places: 0 }]);
    expect(dropPoints).toMatchObject([{ id: 'gate', loadedCm: 900, overBestCm: null }]);
  });
});

describe('plots that no path reaches', () => {
  test('five metres off is reached, a centimetre more is over the ground', () => {
    const plots = [plot('near', 0, 600), plot('far', 5000, 601)];
    const { best } = place({ ...track, plots }, { near: 1, far: 1 });
    expect(best?.plots.map(({ overGroundCm, code }) => [overGroundCm, code])).toEqual([
      [500, 'by-path'],
      [501, 'over-ground'],
    ]);
  });
  test('paths in two parts: the rest is over the ground from the part where the heap lies, and it says so', () => {
    const paths = [line([0, 0], [3000, 0]), line([0, 2000], [3000, 2000])];
    const plots = [plot('a', 0, 300), plot('b', 3000, 2300)];
    const { best } = place({ paths, plots }, { a: 1, b: 5 });
    expect(best).toMatchObject({ at: at(3000, 2000), loadedCm: 5 * 200 + 3000 + 1600 });
    expect(best?.plots.map(({ overGroundCm, code }) => [overGroundCm, code])).toEqual([
      [1600, 'paths-not-joined'],
      [200, 'by-path'],
    ]);
  });
});

describe('no paths drawn', () => {
  const site = {
    plots: [plot('a', 0, 0), plot('b', 3000, 4000)],
    dropPoints: [drop('yard', 600, 800), drop('gate', 0, 0)],
  };
  test.each(['anywhere', 'lorry', 'drop-points'] as const)(
    '%s: straight lines from the drop points to the middles',
    (allowed) => {
      const { best, basis, proof, dropPoints } = place(site, { a: 2, b: 1 }, allowed);
      expect(best).toMatchObject({ at: at(0, 0), dropPointId: 'gate', loadedCm: 5000 });
      expect(best?.plots[1]).toEqual({
        id: 'b',
        loads: 1,
        wayCm: 5000,
        overGroundCm: 5000,
        loadedCm: 5000,
        code: 'straight',
      });
      expect([basis, proof]).toEqual(['straight-lines', { code: 'all-compared', places: 2 }]);
      expect(dropPoints.map(({ id, loadedCm }) => [id, loadedCm])).toEqual([
        ['gate', 5000],
        ['yard', 2 * 1000 + 4000],
      ]);
    },
  );
  test('no drop points either: no place is known', () =>
    expect(place({ plots: site.plots }, { a: 2 })).toMatchObject({
      best: null,
      proof: { code: 'no-place', places: 0 },
    }));
  test('nothing at all', () =>
    expect(place({}, {})).toMatchObject({ best: null, proof: { code: 'no-place' }, dropPoints: [], leftOut: [] }));
});

test('loads of plots that nobody measured are told, and in no sum', () => {
  const plots = [...track.plots, { id: 'x', frame: null, polygon: null }, { id: 'y', frame: null, polygon: null }];
  const { best, leftOut } = place({ ...track, plots }, { west: 1, x: 7 });
  expect(leftOut).toEqual([{ id: 'x', loads: 7 }]);
  expect(best?.loadedCm).toBe(300);
});

describe('refusals', () => {
  test.each([-1, 0.5, Number.NaN, Number.POSITIVE_INFINITY])('%s loads', (loads) =>
    expect(() => place(track, { west: loads })).toThrow(RangeError),
  );
  test('loads of a plot that is not there', () => expect(() => place(track, { nowhere: 1 })).toThrow(RangeError));
  test('more than adds up exactly', () =>
    expect(() => place(track, { west: Number.MAX_SAFE_INTEGER, east: 1 })).toThrow(RangeError));
});

test('the method is named with its version, and nothing given is changed', () => {
  const network = networkOf({ ...track, dropPoints: [drop('gate', 0, 0)] });
  const loads = new Map([['west', 2]]);
  const before = structuredClone(network);
  expect(placeHeap({ network, loads, allowed: 'anywhere' }).method).toEqual({
    name: '1-median of the paths',
    version: 1,
  });
  expect([network, [...loads]]).toEqual([before, [['west', 2]]]);
});
