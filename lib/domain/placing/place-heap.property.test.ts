import { expect, test } from 'vitest';
import { type Chance, chanceOf } from '../../../seeds/chance';
import { cornersOf } from '../ground/polygon';
import type { SitePath } from './drawn-paths';
import { networkOf } from './network';
import { type Allowed, placeHeap } from './place-heap';

// Sites whose paths lie along a lattice, so that every way, joint and nearest point falls on a whole ten centimetres, and a
// site can be walked step by step in the slow and obvious way.
const stepCm = 10;

type Plot = { readonly id: string; readonly xCm: number; readonly yCm: number; readonly halfCm: number };
type Site = {
  readonly paths: readonly SitePath[];
  readonly plots: readonly Plot[];
  readonly loads: ReadonlyMap<string, number>;
};

function randomSite(chance: Chance, size: { paths: number; plots: number; acrossM: number }): Site {
  const across = () => chance.whole(0, size.acrossM / 2) * 200;
  const paths = Array.from({ length: size.paths }, (): SitePath => {
    // Once round one or two corners, never nearer to another line than two metres without touching it.
    const points = [{ xCm: across(), yCm: across() }];
    for (let corner = chance.whole(1, 3); corner > 0; corner--) {
      const last = points.at(-1) as { xCm: number; yCm: number };
      points.push(
        chance.next() < 0.5
          ? { ...last, xCm: otherThan(last.xCm, across) }
          : { ...last, yCm: otherThan(last.yCm, across) },
      );
    }
    const fromCm = chance.whole(0, 20) * stepCm;
    return {
      points,
      lorry: chance.one(['none', 'whole', { fromCm, toCm: fromCm + chance.whole(0, 90) * stepCm }] as const),
    };
  });
  const plots = Array.from({ length: size.plots }, (_, at) => ({
    id: `plot-${at}`,
    xCm: chance.whole(-50, size.acrossM * 10 + 50) * stepCm,
    yCm: chance.whole(-50, size.acrossM * 10 + 50) * stepCm,
    halfCm: chance.whole(1, 40) * stepCm,
  }));
  return { paths, plots, loads: new Map(plots.map(({ id }) => [id, chance.whole(0, 9)])) };
}

function otherThan(value: number, draw: () => number): number {
  const other = draw();
  return other === value ? value + 200 : other;
}

const asPlot = ({ id, xCm, yCm, halfCm }: Plot) => ({
  id,
  frame: { originXCm: xCm - halfCm, originYCm: yCm - halfCm, bearingCentideg: 0 },
  polygon: cornersOf({ xCm: 0, yCm: 0, widthCm: 2 * halfCm, lengthCm: 2 * halfCm }),
});

function placed({ paths, plots, loads }: Site, allowed: Allowed) {
  return placeHeap({ network: networkOf({ paths, plots: plots.map(asPlot), dropPoints: [] }), loads, allowed });
}

/** Every ten centimetres of every path, with the steps between them, and whether a lorry gets there. */
function steppingStones(paths: readonly SitePath[]) {
  const stones = new Map<string, { xCm: number; yCm: number; lorry: boolean; next: Set<string> }>();
  for (const { points, lorry } of paths) {
    let walkedCm = 0;
    let before: string | null = null;
    for (const [at, from] of points.entries()) {
      const to = points[at + 1] ?? from;
      const steps = (Math.abs(to.xCm - from.xCm) + Math.abs(to.yCm - from.yCm)) / stepCm;
      for (let step = 0; step <= steps; step++, walkedCm += stepCm) {
        const [xCm, yCm] = [from.xCm, from.yCm].map(
          (cm, axis) => cm + Math.sign((axis ? to.yCm : to.xCm) - cm) * step * stepCm,
        ) as [number, number];
        const key = `${xCm},${yCm}`;
        const drivable = lorry === 'whole' || (lorry !== 'none' && lorry.fromCm <= walkedCm && walkedCm <= lorry.toCm);
        const stone = stones.get(key) ?? { xCm, yCm, lorry: false, next: new Set<string>() };
        stones.set(key, { ...stone, lorry: stone.lorry || drivable });
        if (before !== null && before !== key) {
          stone.next.add(before);
          stones.get(before)?.next.add(key);
        }
        before = key;
      }
      // The corner is walked once.
      walkedCm -= stepCm;
    }
  }
  return stones;
}

type Stones = ReturnType<typeof steppingStones>;

/** How many steps to every stone that can be reached: one ring after the other. */
function stepsFrom(stones: Stones, from: string): Map<string, number> {
  const steps = new Map([[from, 0]]);
  for (const key of steps.keys())
    for (const next of stones.get(key)?.next ?? []) if (!steps.has(next)) steps.set(next, (steps.get(key) ?? 0) + 1);
  return steps;
}

/** The stone from which a plot is reached: nearest to it within half a metre, then nearest its middle, then left, then up. */
function accessStone(
  stones: Stones,
  keys: readonly string[],
  { xCm, yCm, halfCm }: Plot,
): { key: string; overGroundCm: number } {
  const spots = keys.map((key) => {
    const stone = stones.get(key) ?? { xCm: Number.NaN, yCm: Number.NaN };
    const [dx, dy] = [Math.abs(stone.xCm - xCm), Math.abs(stone.yCm - yCm)];
    const overGroundCm = Math.round(Math.sqrt(Math.max(0, dx - halfCm) ** 2 + Math.max(0, dy - halfCm) ** 2));
    return { key, overGroundCm, order: [dx ** 2 + dy ** 2, stone.xCm, stone.yCm] };
  });
  const least = spots.reduce((best, spot) => Math.min(best, spot.overGroundCm), Number.POSITIVE_INFINITY);
  const [first] = spots
    .filter((spot) => spot.overGroundCm <= least + 50)
    .sort((a, b) => a.order.map((value, at) => value - (b.order[at] ?? 0)).find((gap) => gap !== 0) ?? 0);
  return first as { key: string; overGroundCm: number };
}

/** What is wheeled from every stone. */
function everyPlace({ paths, plots, loads }: Site): { stones: Stones; loadedCm: Map<string, number> } {
  const stones = steppingStones(paths);
  const loadedCm = new Map<string, number>();
  const left = new Set(stones.keys());
  for (const start of left) {
    const part = [...stepsFrom(stones, start).keys()];
    for (const key of part) {
      left.delete(key);
      loadedCm.set(key, 0);
    }
    for (const plot of plots) {
      const { key: access, overGroundCm } = accessStone(stones, part, plot);
      for (const [key, steps] of stepsFrom(stones, access))
        loadedCm.set(key, (loadedCm.get(key) ?? 0) + (loads.get(plot.id) ?? 0) * (overGroundCm + steps * stepCm));
    }
  }
  return { stones, loadedCm };
}

/** The best place is as good as the best of every ten centimetres, and lies on one that is as good as it says. */
function expectBest(site: Site): void {
  const { stones, loadedCm } = everyPlace(site);
  for (const allowed of ['anywhere', 'lorry'] as const) {
    const { best, proof } = placed(site, allowed);
    const open = [...loadedCm].filter(([key]) => allowed === 'anywhere' || stones.get(key)?.lorry);
    if (open.length === 0) {
      expect(proof.code).toBe('no-place');
      continue;
    }
    if (best === null) {
      expect([...site.loads.values()].every((count) => count === 0)).toBe(true);
      continue;
    }
    const least = open.reduce((lowest, [, cm]) => Math.min(lowest, cm), Number.POSITIVE_INFINITY);
    expect(best.loadedCm).toBe(least);
    expect(loadedCm.get(`${best.at.xCm},${best.at.yCm}`)).toBe(least);
    expect(best.plots.reduce((sum, plot) => sum + plot.loads * plot.wayCm, 0)).toBe(least);
  }
}

test('200 random networks: no place on any path is better, looked at every ten centimetres', () => {
  for (let seed = 1; seed <= 200; seed++) {
    const chance = chanceOf(seed);
    expectBest(
      randomSite(chance, { paths: chance.whole(1, 7), plots: chance.whole(1, 40), acrossM: chance.whole(5, 30) }),
    );
  }
});

test.each([100, 500])('%s plots on one large site', (plots) => {
  expectBest(randomSite(chanceOf(plots), { paths: 12, plots, acrossM: 60 }));
});

const sites = Array.from({ length: 40 }, (_, seed) => {
  const chance = chanceOf(1000 + seed);
  return randomSite(chance, { paths: chance.whole(1, 6), plots: chance.whole(1, 30), acrossM: 30 });
});

test('the order of plots and paths, and which way a path was drawn, change nothing', () => {
  for (const site of sites) {
    const turned = site.paths
      .toReversed()
      .map(
        ({ points, lorry }): SitePath => ({ points: points.toReversed(), lorry: lorry === 'whole' ? lorry : 'none' }),
      );
    const plain = site.paths.map(
      ({ points, lorry }): SitePath => ({ points, lorry: lorry === 'whole' ? lorry : 'none' }),
    );
    for (const allowed of ['anywhere', 'lorry'] as const) {
      const one = placed({ ...site, paths: plain }, allowed);
      const other = placed({ ...site, paths: turned, plots: site.plots.toReversed() }, allowed);
      expect({ ...other, best: other.best && { ...other.best, plots: other.best.plots.toReversed() } }).toEqual(one);
    }
  }
});

test('a drop point more changes no way and no best place but to lie on it', () => {
  for (const site of sites) {
    const { paths, loads } = site;
    const plots = site.plots.map(asPlot);
    const bare = placeHeap({ network: networkOf({ paths, plots, dropPoints: [] }), loads, allowed: 'anywhere' }).best;
    const dropPoints = [{ id: 'gate', at: { xCm: 770, yCm: 1230 } }];
    const { best, dropPoints: compared } = placeHeap({
      network: networkOf({ paths, plots, dropPoints }),
      loads,
      allowed: 'anywhere',
    });
    expect(best?.loadedCm).toBe(bare?.loadedCm);
    for (const { overBestCm } of compared) expect(overBestCm ?? 0).toBeGreaterThanOrEqual(0);
  }
});

test('a load more for a plot that is reached from the best place never moves it', () => {
  let tried = 0;
  for (const site of sites) {
    const network = networkOf({ paths: site.paths, plots: site.plots.map(asPlot), dropPoints: [] });
    const { best } = placeHeap({ network, loads: site.loads, allowed: 'anywhere' });
    for (const { id, wayCm, overGroundCm } of best?.plots ?? []) {
      // Reached from there without walking along a path, and from no other part of the paths sooner.
      const nearest = network.plots
        .find((plot) => plot.id === id)
        ?.accesses.reduce((least, access) => Math.min(least, access.overGroundCm), wayCm);
      if (wayCm !== overGroundCm || nearest !== overGroundCm) continue;
      const loads = new Map(site.loads).set(id, (site.loads.get(id) ?? 0) + 1);
      expect(placeHeap({ network, loads, allowed: 'anywhere' }).best?.at).toEqual(best?.at);
      tried++;
    }
  }
  expect(tried).toBeGreaterThan(10);
});
