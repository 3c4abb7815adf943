import 'server-only';
import { type Material, materialOf, materials } from '@/lib/domain/catalogue/materials';
import { acrossCmOfRound, type Heap, heapLitres } from '@/lib/domain/quantity/heap-volume';
import type { Units } from '@/lib/domain/quantity/length';
import { loadsIn } from '@/lib/domain/quantity/load';
import type { Outcome } from '../refusal';
import { aChoice, aLength, aLengthOrNone, optional, readFields, type Typed, wrong } from './fields';

export const heapShapes = ['cone', 'dome', 'ridge', 'flat-topped', 'box', 'trailer'] as const;
export type HeapShape = (typeof heapShapes)[number];

export type Barrows = { readonly society: number; readonly own: number };

export type HeapAnswer = {
  readonly heap: Heap;
  /** Where a tape was laid round it [cm]. */
  readonly roundCm: number | null;
  readonly litres: number;
  readonly loads: number;
  /** Of the member's own barrow, where it is another. */
  readonly ownLoads: number | null;
  readonly material: Material | null;
};

/** A heap of a given shape in litres and whole barrow-loads. */
export function askHeap(typed: Typed, units: Units, barrows: Barrows): Outcome<HeapAnswer> {
  const shape = readFields({ shape: aChoice(heapShapes) }, typed, units);
  if (!shape.ok) return shape;
  const read = heapOf(shape.value.shape, typed, units);
  const material = readFields({ material: optional(aChoice(materials.map(({ key }) => key))) }, typed, units);
  if (!read.ok) return read;
  if (!material.ok) return material;
  const litres = heapLitres(read.value.heap);
  const loads = (barrowLitres: number) => loadsIn({ thousandths: litres, unit: 'm3' }, barrowLitres, 1);
  return {
    ok: true,
    value: {
      ...read.value,
      litres,
      loads: loads(barrows.society),
      ownLoads: barrows.own === barrows.society ? null : loads(barrows.own),
      material: materialOf(material.value.material ?? '') ?? null,
    },
  };
}

type Sized = { readonly heap: Heap; readonly roundCm: number | null };

const sides = { lengthCm: aLength, widthCm: aLength, heightCm: aLength };

function heapOf(kind: HeapShape, typed: Typed, units: Units): Outcome<Sized> {
  if (kind === 'cone') return coneOf(typed, units);
  if (kind === 'flat-topped' || kind === 'trailer') return toppedOf(kind, typed, units);
  const read = readFields(sides, typed, units);
  if (!read.ok) return read;
  if (kind === 'ridge' && read.value.lengthCm < read.value.widthCm) return wrong('ridge-too-short', 'lengthCm');
  return { ok: true, value: { heap: { kind, ...read.value }, roundCm: null } };
}

// Nobody can lay a tape through a heap, so it may be laid round it.
function coneOf(typed: Typed, units: Units): Outcome<Sized> {
  const fields = { acrossCm: optional(aLength), roundCm: optional(aLength), heightCm: aLength };
  const read = readFields(fields, typed, units);
  if (!read.ok) return read;
  const { acrossCm, roundCm, heightCm } = read.value;
  const across = acrossCm ?? (roundCm === null ? null : acrossCmOfRound(roundCm));
  if (across === null || (acrossCm !== null && roundCm !== null)) return wrong('one-of-two', 'acrossCm', 'roundCm');
  return { ok: true, value: { heap: { kind: 'cone', acrossCm: across, heightCm }, roundCm } };
}

function toppedOf(kind: 'flat-topped' | 'trailer', typed: Typed, units: Units): Outcome<Sized> {
  const tops = { topLengthCm: aLengthOrNone, topWidthCm: aLengthOrNone };
  const read = readFields(
    { ...sides, ...tops, sidesCm: kind === 'trailer' ? aLength : optional(aLength) },
    typed,
    units,
  );
  if (!read.ok) return read;
  const { sidesCm, ...sizes } = read.value;
  const larger = [
    ...(sizes.topLengthCm > sizes.lengthCm ? ['topLengthCm'] : []),
    ...(sizes.topWidthCm > sizes.widthCm ? ['topWidthCm'] : []),
  ];
  if (larger.length) return wrong('top-larger-than-foot', ...larger);
  const heap: Heap = kind === 'trailer' ? { kind, ...sizes, sidesCm: sidesCm ?? 0 } : { kind, ...sizes };
  return { ok: true, value: { heap, roundCm: null } };
}
