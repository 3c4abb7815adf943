import { positive } from './checked';

type Sides = { readonly lengthCm: number; readonly widthCm: number; readonly heightCm: number };
type Top = { readonly topLengthCm: number; readonly topWidthCm: number };

/** A heap as it can be measured with a tape and a stick. */
export type Heap =
  /** Tipped in one go: round at the foot, pointed. */
  | { readonly kind: 'cone'; readonly acrossCm: number; readonly heightCm: number }
  /** Rounded over: half an ellipsoid, as long as it is broad or longer. */
  | ({ readonly kind: 'dome' } & Sides)
  /** A long heap with a sharp back: a triangle in section, with half a cone at each end. */
  | ({ readonly kind: 'ridge' } & Sides)
  /** A bay or a level trailer. */
  | ({ readonly kind: 'box' } & Sides)
  /** A rectangle at the foot and a smaller one on top; a top of no width is a roof. */
  | ({ readonly kind: 'flat-topped' } & Sides & Top)
  /** A trailer filled to its sides and heaped over them, flat-topped. */
  | ({ readonly kind: 'trailer'; readonly sidesCm: number } & Sides & Top);

/**
 * The volume of a heap of a given shape.
 *
 * Method: cone π d² h ÷ 12; dome π l w h ÷ 6; ridge (l − w) w h ÷ 2 with a cone's two halves; flat top by the prismoidal
 * formula h ÷ 6 × (foot + top + (l + l′)(w + w′)); a trailer is its box and what stands over the sides. No heap is
 * so even: the litres are an estimate.
 *
 * @param heap   sizes > 0 [cm]; a ridge is at least as long as broad; heightCm of a trailer is what stands over its sides;
 *               tops ≥ 0 and no larger than the foot [cm]
 * @returns      whole litres, rounded down; it grows with every size
 * @throws RangeError on anything else
 * @source       solid geometry
 * @example      heapLitres({ kind: 'cone', acrossCm: 200, heightCm: 100 }) → 1,047 (12 loads of 85 L)
 */
export function heapLitres(heap: Heap): number {
  // To the nearest millilitre first, so that a heap of exactly so many litres is not one short.
  return Math.floor(Math.round(volumeMl(heap)) / 1000);
}

function volumeMl(heap: Heap): number {
  const heightCm = positive(heap.heightCm, 'a heap’s height');
  if (heap.kind === 'cone') return coneMl(positive(heap.acrossCm, 'a heap’s breadth'), heightCm);
  const lengthCm = positive(heap.lengthCm, 'a heap’s length');
  const widthCm = positive(heap.widthCm, 'a heap’s width');
  if (heap.kind === 'box') return lengthCm * widthCm * heightCm;
  if (heap.kind === 'dome') return (Math.PI * lengthCm * widthCm * heightCm) / 6;
  if (heap.kind === 'ridge') {
    if (lengthCm < widthCm) throw new RangeError('a ridge is at least as long as broad');
    return ((lengthCm - widthCm) * widthCm * heightCm) / 2 + coneMl(widthCm, heightCm);
  }
  const { topLengthCm, topWidthCm } = heap;
  if (!(topLengthCm >= 0 && topLengthCm <= lengthCm && topWidthCm >= 0 && topWidthCm <= widthCm))
    throw new RangeError('the top of a heap is no larger than its foot');
  const middle = (lengthCm + topLengthCm) * (widthCm + topWidthCm);
  const overMl = (heightCm / 6) * (lengthCm * widthCm + topLengthCm * topWidthCm + middle);
  return heap.kind === 'trailer' ? lengthCm * widthCm * positive(heap.sidesCm, 'a trailer’s sides') + overMl : overMl;
}

function coneMl(acrossCm: number, heightCm: number): number {
  return (Math.PI * acrossCm ** 2 * heightCm) / 12;
}

/**
 * How broad a round heap is, from a tape laid round its foot: nobody can lay one through it.
 *
 * @param roundCm  all the way round; > 0 [cm]
 * @returns        across [cm], unrounded
 * @throws RangeError on anything else
 * @source         Alberta Agriculture, Nutrient Management Planning Guide, p. 124: circumference ÷ π
 * @example        acrossCmOfRound(2200) → 700.3
 */
export function acrossCmOfRound(roundCm: number): number {
  return positive(roundCm, 'the way round a heap') / Math.PI;
}
