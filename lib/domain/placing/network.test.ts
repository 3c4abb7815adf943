import { describe, expect, test } from 'vitest';
import { cornersOf, type Polygon } from '../ground/polygon';
import type { SitePath } from './drawn-paths';
import { networkOf, type PathNetwork } from './network';
import type { Stretch } from './piece';
import { shortestWays } from './shortest-ways';

const at = (xCm: number, yCm: number) => ({ xCm, yCm });
/** A path by its points: '0,0 500,0'. */
const path = (points: string, lorry: SitePath['lorry'] = 'none'): SitePath => ({
  points: [...points.matchAll(/(\S+),(\S+)/g)].map(([, x, y]) => at(Number(x), Number(y))),
  lorry,
});
const upright = { originXCm: 0, originYCm: 0, bearingCentideg: 0 };
const plot = (id: string, polygon: Polygon | null, frame = upright) => ({ id, frame: polygon && frame, polygon });
const square = (xCm: number, yCm: number, sideCm = 200) => cornersOf({ xCm, yCm, widthCm: sideCm, lengthCm: sideCm });
const ofPaths = (...paths: SitePath[]) => networkOf({ paths, plots: [], dropPoints: [] });

/** The way between two places of a network; NaN where one of them is no node. */
function wayCm({ nodes }: PathNetwork, from: readonly [number, number], to: readonly [number, number]): number {
  const nodeAt = ([x, y]: readonly [number, number]) =>
    nodes.findIndex((node) => node.at.xCm === x && node.at.yCm === y);
  const ways = nodes.map((node) => node.ways);
  return shortestWays(ways, nodeAt(from))[nodeAt(to)] ?? Number.NaN;
}

describe('where paths are joined', () => {
  test('crossing', () => {
    const network = ofPaths(path('0,0 1000,0'), path('300,-400 300,800'));
    expect(wayCm(network, [0, 0], [300, 800])).toBe(1100);
    expect(network.nodes).toHaveLength(5);
  });
  test('crossing off the whole centimetre, aslant', () => {
    const network = ofPaths(path('0,0 1000,1'), path('333,-100 334,100'));
    expect(network.nodes.map((node) => node.at)).toContainEqual(at(334, 0));
    expect(wayCm(network, [0, 0], [1000, 1])).toBe(1000);
    expect(wayCm(network, [0, 0], [334, 100])).toBe(434);
  });
  test('touching, at a corner and on a side', () => {
    expect(wayCm(ofPaths(path('0,0 300,400'), path('300,400 300,900')), [0, 0], [300, 900])).toBe(1000);
    expect(wayCm(ofPaths(path('0,0 1000,0'), path('500,0 500,900')), [0, 0], [500, 900])).toBe(1400);
  });
  test('an end that stops a metre short, and not one that stops a centimetre farther off', () => {
    const short = (gapCm: number) => ofPaths(path('0,0 1000,0'), path(`500,${gapCm} 500,900`));
    expect(wayCm(short(100), [0, 0], [500, 900])).toBe(500 + 100 + 800);
    expect(short(100).nodes.map(({ part }) => part)).toEqual([0, 0, 0, 0, 0]);
    expect(wayCm(short(101), [0, 0], [500, 900])).toBe(Number.POSITIVE_INFINITY);
    expect(new Set(short(101).nodes.map(({ part }) => part)).size).toBe(2);
  });
  test('two ends a little apart', () => {
    const network = ofPaths(path('0,0 1000,0'), path('1030,40 1030,540'));
    expect(wayCm(network, [0, 0], [1030, 540])).toBe(1000 + 50 + 500);
  });
  test('a corner is no end: paths that pass close by each other are not joined', () => {
    const network = ofPaths(path('0,0 500,90 1000,0'), path('0,300 500,110 1000,300'));
    expect(new Set(network.nodes.map(({ part }) => part)).size).toBe(2);
  });
  test('running over each other', () => {
    const network = ofPaths(path('0,0 600,0'), path('200,0 1000,0'), path('600,0 200,0'));
    expect(wayCm(network, [0, 0], [1000, 0])).toBe(1000);
    expect(network.nodes).toHaveLength(4);
  });
  test('what lies on the stretch that both share is on both', () => {
    const dropPoints = [{ id: 'a', at: at(620, 0) }];
    const paths = [path('0,0 1000,0'), path('400,0 400,900'), path('1400,0 400,0', { fromCm: 60, toCm: 420 })];
    const network = networkOf({ paths, plots: [], dropPoints });
    expect(wayCm(network, [620, 0], [980, 0])).toBe(360);
    expect(network.nodes.filter((node) => node.lorry).map((node) => node.at.xCm)).toEqual([980, 1000, 1340]);
  });
  test('a ring, and a path that crosses itself', () => {
    expect(wayCm(ofPaths(path('0,0 400,0 400,400 0,400 0,0')), [0, 0], [0, 400])).toBe(400);
    const loop = ofPaths(path('0,0 1000,0 1000,400 500,400 500,-400'));
    expect(wayCm(loop, [0, 0], [500, -400])).toBe(900);
  });
  test('a point drawn twice adds nothing', () =>
    expect(ofPaths(path('0,0 0,0 500,0 500,0'))).toEqual(ofPaths(path('0,0 500,0'))));
});

describe('lengths', () => {
  test('however many nodes lie on a piece, its ways sum to its length', () => {
    // Each step of 7 by 5 is 8.6 cm: rounded by itself, the path would come to 900 and not 860.
    const dropPoints = Array.from({ length: 99 }, (_, step) => ({
      id: String(step),
      at: at(7 * step + 7, 5 * step + 5),
    }));
    const network = networkOf({
      paths: [path('0,0 700,500')],
      plots: [],
      dropPoints,
    });
    expect(network.nodes).toHaveLength(101);
    expect(wayCm(network, [0, 0], [700, 500])).toBe(860);
  });
  test('whichever way a path was drawn, and however paths are listed, the network is the same', () => {
    const paths = [path('0,0 700,501 1400,3', 'whole'), path('10,400 900,-77'), path('300,90 300,900')];
    const turned = paths.toReversed().map(({ points, lorry }) => ({ points: points.toReversed(), lorry }));
    expect(ofPaths(...turned)).toEqual(ofPaths(...paths));
  });
});

describe('where a lorry can drive', () => {
  const drivable = (lorry: SitePath['lorry'], points: string) =>
    ofPaths(path(points, lorry))
      .nodes.filter((node) => node.lorry)
      .map((node) => [node.at.xCm, node.at.yCm]);
  const bend = '0,0 500,0 500,800';

  test('all of a path, or none of it', () => {
    expect(drivable('whole', bend)).toEqual([
      [0, 0],
      [500, 0],
      [500, 800],
    ]);
    expect(drivable('none', bend)).toEqual([]);
  });
  test('a stretch from where the path was begun, its ends among the nodes', () => {
    expect(drivable({ fromCm: 200, toCm: 700 }, bend)).toEqual([
      [200, 0],
      [500, 0],
      [500, 200],
    ]);
    expect(drivable({ fromCm: 200, toCm: 700 }, '500,800 500,0 0,0')).toEqual([
      [500, 100],
      [500, 600],
    ]);
  });
  test('as far as the path goes', () => {
    expect(drivable({ fromCm: 500, toCm: 99_999 }, bend)).toEqual([
      [500, 0],
      [500, 800],
    ]);
    expect(drivable({ fromCm: 1300, toCm: 1300 }, bend)).toEqual([[500, 800]]);
    expect(() => drivable({ fromCm: 1301, toCm: 1400 }, bend)).toThrow(RangeError);
  });
  test('a joint of a track with a path lies on the track', () => {
    const network = ofPaths(path('0,0 1000,0', 'whole'), path('500,0 500,900'));
    expect(network.nodes.find((node) => node.at.xCm === 500 && node.at.yCm === 0)?.lorry).toBe(true);
    expect(network.nodes.find((node) => node.at.yCm === 900)?.lorry).toBe(false);
  });
});

describe('from where a plot is reached', () => {
  const accesses = (polygon: Polygon, paths: readonly SitePath[], frame = upright) => {
    const { nodes, plots } = networkOf({ paths, plots: [plot('a', polygon, frame)], dropPoints: [] });
    return plots[0]?.accesses.map(({ node, overGroundCm }) => [nodes[node]?.at.xCm, nodes[node]?.at.yCm, overGroundCm]);
  };
  const track = path('0,0 1000,0');

  test('opposite the middle of its frontage', () =>
    expect(accesses(square(400, 200), [track])).toEqual([[500, 0, 200]]));
  test('opposite the middle too where the path is a little aslant', () => {
    expect(accesses(square(400, 200), [path('0,0 1000,40')])).toEqual([[511, 20, 180]]);
  });
  test('at its corner where the path is much aslant', () => {
    const narrow = cornersOf({ xCm: 0, yCm: 1000, widthCm: 200, lengthCm: 1000 });
    expect(accesses(narrow, [path('0,0 1000,1000')])).toEqual([[600, 600, 566]]);
  });
  test('from the end of a path that stops short of it', () =>
    expect(accesses(square(1200, -100), [track])).toEqual([[1000, 0, 200]]));
  test('where the path runs on to it', () => {
    expect(accesses(square(900, -100, 500), [track])).toEqual([[1000, 0, 0]]);
    expect(accesses(square(400, -100), [track])).toEqual([[500, 0, 0]]);
  });
  test('where the path crosses a corner of it', () =>
    expect(accesses([at(0, 0), at(600, 0), at(0, 600)], [path('500,-100 500,1000')])).toEqual([[500, 100, 0]]));
  test('as it lies on the site', () =>
    expect(accesses(square(0, 0), [track], { originXCm: 600, originYCm: 300, bearingCentideg: 9000 })).toEqual([
      [500, 0, 300],
    ]));
  test('from each part of the paths', () => {
    expect(accesses(square(400, 200), [track, path('0,700 1000,700')])).toEqual([
      [500, 0, 200],
      [500, 700, 300],
    ]);
  });
  test('of two paths equally near the one farther up', () =>
    expect(accesses(square(400, 200), [path('0,600 0,0 1000,0'), path('0,600 1000,600')])).toEqual([[500, 0, 200]]));
});

describe('what lies off the paths', () => {
  test('a plot that nobody measured is told apart', () => {
    const network = networkOf({ paths: [], plots: [plot('a', null), plot('b', square(0, 0))], dropPoints: [] });
    expect(network).toEqual({
      nodes: [],
      plots: [{ id: 'b', middle: at(100, 100), accesses: [] }],
      notMeasured: ['a'],
      dropPoints: [],
    });
  });
  test('a drop point beside a path, and one where there is none', () => {
    const dropPoints = [{ id: 'gate', at: at(300, 250) }];
    const { nodes, dropPoints: beside } = networkOf({
      paths: [path('0,0 1000,0')],
      plots: [],
      dropPoints,
    });
    expect(nodes[beside[0]?.access?.node ?? -1]?.at).toEqual(at(300, 0));
    expect(beside[0]?.access?.overGroundCm).toBe(250);
    expect(networkOf({ paths: [], plots: [], dropPoints }).dropPoints).toEqual([{ ...dropPoints[0], access: null }]);
  });
});

describe('refusals', () => {
  const stretch = (fromCm: number, toCm: number): Stretch => ({ fromCm, toCm });
  test.each([
    ['half a centimetre', path('0,0 0.5,0')],
    ['no number', path('0,0 x,0')],
    ['a point eleven kilometres off', path('0,0 1100000,0')],
    ['one point', path('0,0')],
    ['no point', path('')],
    ['the same point again', path('5,5 5,5')],
    ['a stretch that runs backwards', path('0,0 900,0', stretch(5, 4))],
    ['a stretch from before the path', path('0,0 900,0', stretch(-1, 4))],
    ['a stretch off the whole centimetre', path('0,0 900,0', stretch(0, 4.5))],
  ])('%s', (_, wrong) => expect(() => ofPaths(wrong)).toThrow(RangeError));
  test('a drop point off the whole centimetre', () =>
    expect(() => networkOf({ paths: [], plots: [], dropPoints: [{ id: 'a', at: at(0, 0.5) }] })).toThrow(RangeError));
  test('a plot or a drop point that stands twice', () => {
    const twice = [plot('a', square(0, 0)), plot('a', square(0, 900))];
    expect(() => networkOf({ paths: [], plots: twice, dropPoints: [] })).toThrow(RangeError);
    const drops = [
      { id: 'a', at: at(0, 0) },
      { id: 'a', at: at(9, 9) },
    ];
    expect(() => networkOf({ paths: [], plots: [], dropPoints: drops })).toThrow(RangeError);
  });
  test('a plot of two corners, and one off the site', () => {
    const made = (polygon: Polygon) => networkOf({ paths: [], plots: [plot('a', polygon)], dropPoints: [] });
    expect(() => made([at(0, 0), at(0, 9)])).toThrow(RangeError);
    expect(() => made(square(2_000_000, 0))).toThrow(RangeError);
  });
});

test('what was given is left as it was', () => {
  const given = {
    paths: [path('0,0 0,0 900,3', { fromCm: 3, toCm: 9 }), path('5,900 5,-9', 'whole')],
    plots: [plot('b', square(100, 100)), plot('a', null)],
    dropPoints: [{ id: 'gate', at: at(900, 900) }],
  };
  const before = structuredClone(given);
  networkOf(given);
  expect(given).toEqual(before);
});
