import type { DiggingMethod } from '../catalogue/digging-methods';
import type { SoilFigures } from '../catalogue/soils';
import { spanOf } from '../quantity/span';
import type { Digging } from './digging';
import type { PartKind } from './drawing';
import { layerHeights } from './layer-heights';
import type { TrenchState } from './progress';

/** One layer of a trench seen from the side. */
export type Layer = { readonly kind: PartKind; readonly heightCm: number };

/** The swell that drawings show, the middle of its range; null where it is not known, and then no swell is drawn. */
export function drawnSwellPercent({ swellLeastPercent, swellMostPercent }: SoilFigures): number | null {
  const span = spanOf(swellLeastPercent, swellMostPercent, (percent) => percent);
  return span && (span.least + span.most) / 2;
}

/** A spit as high as it lies once it was dug. */
export function looseSpitCm({ plan, soil }: Digging): number {
  return (plan.order.spitDepthCm * (100 + (drawnSwellPercent(soil) ?? 0))) / 100;
}

/**
 * The layers of one trench seen from the side, from two spits down upward.
 *
 * Method: each layer as high as its rate or its swell makes it, raked level over the bed. Straw lies ahead to be walked on and
 * goes under with the spit it lay on; manure for the top lies in the middle of the turned spit.
 *
 * @param digging  as `checkedDigging`
 * @param state    how far this trench has come
 * @returns        layers with a height, lowest first; together two spits where nothing was touched
 * @throws RangeError as `layerHeights`
 * @source         common practice
 * @example        opened, spit of 25 cm → subsoil 25
 */
export function columnOf(digging: Digging, state: TrenchState): Layer[] {
  const { order } = digging.plan;
  const heights = layerHeights(digging.dressing);
  const parts: Parts = {
    undug: [
      { kind: 'subsoil', heightCm: order.spitDepthCm },
      { kind: 'undug', heightCm: order.spitDepthCm },
    ],
    bottom: { kind: 'manure-bottom', heightCm: heights.manureBottomCm },
    top: { kind: 'manure-top', heightCm: heights.manureTopCm },
    straw: { kind: 'straw', heightCm: heights.strawCm },
    looseCm: looseSpitCm(digging),
  };
  const layers = columns[order.method](parts, state === 'finished' ? 'filled' : state).filter(
    (one) => one.heightCm > 0,
  );
  return state === 'finished' ? folded(layers, digging.springFinishCm ?? 0) : layers;
}

type Parts = {
  readonly undug: readonly [Layer, Layer];
  readonly bottom: Layer;
  readonly top: Layer;
  readonly straw: Layer;
  readonly looseCm: number;
};
type Column = (parts: Parts, state: Exclude<TrenchState, 'finished'>) => Layer[];

const columns: Readonly<Record<DiggingMethod, Column>> = {
  'double-digging': (parts, state) => opened(parts, state, { kind: 'forked', heightCm: parts.looseCm }),
  'single-digging': (parts, state) => opened(parts, state, parts.undug[0]),
  forking: (parts, state) => {
    if (state !== 'filled') return onTop(parts, state);
    return [parts.undug[0], ...around('forked', parts.looseCm, [parts.top, parts.straw])];
  },
  mulch: onTop,
};

function opened({ undug, bottom, top, straw, looseCm }: Parts, state: TrenchState, floor: Layer): Layer[] {
  if (state === 'undug') return [...undug, straw];
  if (state === 'opened') return [undug[0]];
  const dressed = [floor, bottom];
  return state === 'dressed' ? dressed : [...dressed, straw, ...around('topsoil', looseCm, [top])];
}

function onTop({ undug, top, straw }: Parts, state: TrenchState): Layer[] {
  return state === 'undug' ? [...undug] : [...undug, top, straw];
}

// A spit with something in the middle of it; whole where there is nothing.
function around(kind: PartKind, heightCm: number, between: readonly Layer[]): Layer[] {
  if (between.every((layer) => layer.heightCm === 0)) return [{ kind, heightCm }];
  const half = { kind, heightCm: heightCm / 2 };
  return [half, ...between, half];
}

function folded(layers: readonly Layer[], finishCm: number): Layer[] {
  let aboveCm = heightOf(layers) - finishCm;
  const below = layers.map((layer) => {
    const heightCm = Math.max(0, Math.min(layer.heightCm, aboveCm));
    aboveCm -= layer.heightCm;
    return { ...layer, heightCm };
  });
  return [...below, { kind: 'folded' as const, heightCm: finishCm }].filter(({ heightCm }) => heightCm > 0);
}

/** How high layers lie together [cm]. */
export function heightOf(layers: readonly Layer[]): number {
  return layers.reduce((sum, { heightCm }) => sum + heightCm, 0);
}
