import { toSite } from '../ground/frame';

type Corner = readonly [number, number];
type Frame = { readonly originXCm: number | null; readonly originYCm: number | null; readonly bearingCentideg: number };
type Ground = {
  readonly sites: readonly {
    readonly id: string;
    readonly name: string;
    readonly northCentideg: number;
    readonly outline: unknown;
  }[];
  readonly plots: readonly {
    readonly id: string;
    readonly siteId: string;
    readonly number: string;
    readonly polygon: unknown;
    readonly frame: Frame;
  }[];
  readonly beds: readonly {
    readonly id: string;
    readonly plotId: string;
    readonly name: string;
    readonly xCm: number;
    readonly yCm: number;
    readonly widthCm: number;
    readonly lengthCm: number;
  }[];
  readonly paths: readonly {
    readonly id: string;
    readonly siteId: string;
    readonly name: string | null;
    readonly points: unknown;
    readonly lorry: string;
  }[];
  readonly dropPoints: readonly {
    readonly id: string;
    readonly siteId: string;
    readonly name: string;
    readonly xCm: number;
    readonly yCm: number;
  }[];
};

/**
 * The ground as one drawing that any program can read: every shape as corners on its site.
 *
 * @param ground  sites, and the plots, beds, paths and drop points that stand; shapes as they are kept [cm]
 * @returns       the same by site; corners in whole site centimetres, x to the right and y down the page; null for ground that
 *                nobody has measured in
 * @example       a bed at 100, 0 of a plot whose frame begins at 1000, 0 → its first corner 1100, 0
 */
export function groundDrawing({ sites, plots, beds, paths, dropPoints }: Ground) {
  return {
    units: 'centimetres of the site; x to the right, y down the page',
    sites: sites.map(({ id, name, northCentideg, outline }) => ({
      ...{ id, name, northCentideg, outline },
      paths: paths
        .filter(({ siteId }) => siteId === id)
        .map(({ siteId: _, ...path }) => path)
        .map(pathOf),
      dropPoints: dropPoints
        .filter(({ siteId }) => siteId === id)
        .map((one) => ({ id: one.id, name: one.name, at: [one.xCm, one.yCm] })),
      plots: plots
        .filter(({ siteId }) => siteId === id)
        .map((plot) => ({
          id: plot.id,
          number: plot.number,
          corners: onSite(plot.frame, cornersIn(plot.polygon)),
          beds: beds
            .filter(({ plotId }) => plotId === plot.id)
            .map((bed) => ({ id: bed.id, name: bed.name, corners: onSite(plot.frame, cornersOf(bed)) })),
        })),
    })),
  };
}

function pathOf({ id, name, points, lorry }: { id: string; name: string | null; points: unknown; lorry: string }) {
  return { id, name, points, lorry };
}

function cornersIn(polygon: unknown): readonly Corner[] | null {
  return Array.isArray(polygon) ? (polygon as Corner[]) : null;
}

function cornersOf({ xCm, yCm, widthCm, lengthCm }: Ground['beds'][number]): Corner[] {
  const [right, lower] = [xCm + widthCm, yCm + lengthCm];
  return [
    [xCm, yCm],
    [right, yCm],
    [right, lower],
    [xCm, lower],
  ];
}

function onSite({ originXCm, originYCm, bearingCentideg }: Frame, corners: readonly Corner[] | null): Corner[] | null {
  if (originXCm === null || originYCm === null || !corners) return null;
  return corners.map(([xCm, yCm]): Corner => {
    const point = toSite({ originXCm, originYCm, bearingCentideg }, { xCm, yCm });
    return [Math.round(point.xCm), Math.round(point.yCm)];
  });
}
