import { expect, test } from 'vitest';
import { type Chance, chanceOf } from '../../../seeds/chance';
import { cornersOf } from '../ground/polygon';
import { distanceToSegment } from '../ground/segment';
import { networkOf } from './network';
import { placeHeap } from './place-heap';

// Paths aslant, crossing anywhere, against floats in which nothing is rounded.

/** x and y of one end, then of the other [cm]. */
type Line = readonly [number, number, number, number];
/** A plot on a path: on which line, at what share of it, with how many loads. */
type Wanted = { readonly line: number; readonly along: number; readonly loads: number };

const lineOf = (lines: readonly Line[], at: number): Line => lines[at] ?? [0, 0, 0, 0];
const lengthOf = ([x1, y1, x2, y2]: Line) => Math.sqrt((x2 - x1) ** 2 + (y2 - y1) ** 2);
const pointOf = ([x1, y1, x2, y2]: Line, along: number) => ({ x: x1 + along * (x2 - x1), y: y1 + along * (y2 - y1) });

/** All cross the first, so that nothing is out of reach; and none ends so near to another that it would be joined to it. */
function randomLines(chance: Chance): Line[] {
  const spine = [0, 1500, 3000, 1500 + chance.whole(-400, 400)] as const;
  const across = (): Line => [
    chance.whole(0, 3000),
    chance.whole(0, 900),
    chance.whole(0, 3000),
    chance.whole(2100, 3000),
  ];
  const lines = [spine, ...Array.from({ length: chance.whole(1, 5) }, across)];
  const at = (xCm: number, yCm: number) => ({ xCm, yCm });
  const isClear = (one: Line, [u1, v1, u2, v2]: Line) =>
    [at(u1, v1), at(u2, v2)].every((end) => distanceToSegment(at(one[0], one[1]), at(one[2], one[3]), end) > 101);
  const areClear = lines.every((one) => lines.every((other) => one === other || isClear(one, other)));
  return areClear ? lines : randomLines(chance);
}

/** A place every half-metre of each line, beside its crossings and plots, with the ways between neighbours. */
function spotsOf(lines: readonly Line[], wanted: readonly Wanted[]) {
  const spots: { line: number; along: number }[] = [];
  const put = (line: number, along: number) => spots.push({ line, along }) - 1;
  const same: [number, number][] = [];
  for (const [i, one] of lines.entries()) {
    for (let cm = 0; cm < lengthOf(one); cm += 50) put(i, cm / lengthOf(one));
    put(i, 1);
    for (const [j, other] of lines.entries()) {
      const [x1, y1, x2, y2] = one;
      const [u1, v1, u2, v2] = other;
      const turn = (x2 - x1) * (v2 - v1) - (y2 - y1) * (u2 - u1);
      const s = ((u1 - x1) * (v2 - v1) - (v1 - y1) * (u2 - u1)) / turn;
      const t = ((u1 - x1) * (y2 - y1) - (v1 - y1) * (x2 - x1)) / turn;
      if (j > i && s >= 0 && s <= 1 && t >= 0 && t <= 1) same.push([put(i, s), put(j, t)]);
    }
  }
  const homes = wanted.map(({ line, along }) => put(line, along));
  const ways: (readonly [number, number, number])[] = same.map(([a, b]) => [a, b, 0]);
  for (const [line, one] of lines.entries()) {
    const here = spots.flatMap((spot, at) => (spot.line === line ? [{ at, cm: spot.along * lengthOf(one) }] : []));
    here.sort((a, b) => a.cm - b.cm);
    for (const [at, from] of here.entries()) {
      const to = here[at + 1];
      if (to) ways.push([from.at, to.at, to.cm - from.cm]);
    }
  }
  return { count: spots.length, homes, ways };
}

/** Bellman and Ford: until no way gets shorter. */
function waysInFloats(count: number, ways: readonly (readonly [number, number, number])[], from: number): number[] {
  const cm = Array.from({ length: count }, (_, at) => (at === from ? 0 : Number.POSITIVE_INFINITY));
  for (let shorter = true; shorter; ) {
    shorter = false;
    for (const [a, b, length] of ways)
      for (const [near, far] of [
        [a, b],
        [b, a],
      ] as const)
        if ((cm[near] ?? 0) + length < (cm[far] ?? 0) - 1e-9) {
          cm[far] = (cm[near] ?? 0) + length;
          shorter = true;
        }
  }
  return cm;
}

function leastInFloats(lines: readonly Line[], wanted: readonly Wanted[]): number {
  const { count, homes, ways } = spotsOf(lines, wanted);
  const totals = new Array<number>(count).fill(0);
  for (const [at, home] of homes.entries())
    for (const [spot, cm] of waysInFloats(count, ways, home).entries())
      totals[spot] = (totals[spot] ?? 0) + cm * (wanted[at]?.loads ?? 0);
  return Math.min(...totals);
}

test('40 random networks: as good as the best of every half-metre, to within the rounding', () => {
  for (let seed = 1; seed <= 40; seed++) {
    const chance = chanceOf(seed);
    const lines = randomLines(chance);
    const wanted = Array.from({ length: chance.whole(1, 12) }, () => ({
      line: chance.whole(0, lines.length - 1),
      along: chance.next(),
      loads: chance.whole(1, 9),
    }));
    const network = networkOf({
      paths: lines.map(([x1, y1, x2, y2]) => ({
        points: [
          { xCm: x1, yCm: y1 },
          { xCm: x2, yCm: y2 },
        ],
        lorry: 'none',
      })),
      plots: wanted.map(({ line, along }, at) => {
        const { x, y } = pointOf(lineOf(lines, line), along);
        const frame = { originXCm: Math.round(x) - 2, originYCm: Math.round(y) - 2, bearingCentideg: 0 };
        return { id: `plot-${at}`, frame, polygon: cornersOf({ xCm: 0, yCm: 0, widthCm: 4, lengthCm: 4 }) };
      }),
      dropPoints: [],
    });
    const loads = new Map(wanted.map((plot, at) => [`plot-${at}`, plot.loads]));
    const { best } = placeHeap({ network, loads, allowed: 'anywhere' });
    // Half a centimetre for each place that is rounded: where each line is come to and left, and where the plot lies.
    const slackCm = wanted.reduce((sum, plot) => sum + plot.loads, 0) * (lines.length + 3);
    expect(Math.abs((best?.loadedCm ?? Number.NaN) - leastInFloats(lines, wanted))).toBeLessThanOrEqual(slackCm);
  }
});
