import { keptAlone, type Shelf, shelves, storeApart } from '../catalogue/store-apart';
import type { SourceKey } from '../catalogue/sources';

/** Something that stands where it ought not: what it is, beside what, and why. */
export type ApartFinding = {
  /** The lot that suffers; of two that both would, the one that comes first. */
  readonly lotId: string;
  readonly besideId: string;
  readonly source: SourceKey;
} & (
  | { readonly code: 'ethylene' | 'taint' | 'alone' }
  /** The two want different air. */
  | { readonly code: 'other-shelf'; readonly wants: Shelf; readonly besideWants: Shelf }
);

type Standing = { readonly id: string; readonly keepingKey: string; readonly placeId: string };

/**
 * What must not stand beside what, among lots that share a place.
 *
 * Method: every two lots of a place against the printed rules: what gives off ethylene and what it harms, what taints, what is
 * kept alone, and shelves whose ranges of warmth or of moisture have nothing in common.
 *
 * @param lots  any; of several places
 * @returns     findings, one for each two lots and code; none is no all-clear for kinds that the charts do not name
 * @source      each rule's own; see the catalogue
 * @example     apples and carrots in one shed → ethylene and taint, both to the carrots
 */
export function mustNotStandBeside(lots: readonly Standing[]): ApartFinding[] {
  return lots.flatMap((one, at) =>
    lots
      .slice(at + 1)
      .filter(({ placeId }) => placeId === one.placeId)
      .flatMap((other) => [
        ...harmsOf(one, other),
        ...harmsOf(other, one),
        ...aloneOf(one, other),
        ...airOf(one, other),
      ]),
  );
}

function harmsOf(harmed: Standing, from: Standing): ApartFinding[] {
  return storeApart
    .filter(({ fromKeys, harmedKeys }) => fromKeys.includes(from.keepingKey) && harmedKeys.includes(harmed.keepingKey))
    .map(({ code, source }) => ({ code, lotId: harmed.id, besideId: from.id, source }));
}

function aloneOf(one: Standing, other: Standing): ApartFinding[] {
  const sets = keptAlone.sets.map((set): readonly string[] => set);
  const isSplit = sets.some((set) => set.includes(one.keepingKey) !== set.includes(other.keepingKey));
  return isSplit ? [{ code: 'alone', lotId: one.id, besideId: other.id, source: keptAlone.source }] : [];
}

function airOf(one: Standing, other: Standing): ApartFinding[] {
  const [wants, besideWants] = [shelfOf(one.keepingKey), shelfOf(other.keepingKey)];
  if (!wants || !besideWants || agree(wants, besideWants)) return [];
  return [{ code: 'other-shelf', lotId: one.id, besideId: other.id, wants, besideWants, source: wants.source }];
}

function shelfOf(keepingKey: string): Shelf | undefined {
  return shelves.find(({ keepingKeys }) => keepingKeys.includes(keepingKey));
}

function agree(one: Shelf, other: Shelf): boolean {
  const warmthMeets = one.fromTenthC <= (other.toTenthC ?? Infinity) && other.fromTenthC <= (one.toTenthC ?? Infinity);
  return warmthMeets && one.fromRh <= other.toRh && other.fromRh <= one.toRh;
}
