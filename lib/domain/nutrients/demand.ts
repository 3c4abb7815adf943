import { type CropDemand, cropDemandsOf } from '../catalogue/crop-demands';
import { nitrogenCeilingOf } from '../catalogue/nitrogen-limits';
import type { SourceKey } from '../catalogue/sources';

/** What one official row says of a crop, for a square metre. */
export type Demand = {
  readonly name: string;
  /** All the nitrogen the crop must find, the soil's own included: no dose. */
  readonly totalNitrogenMgPerM2: number | null;
  readonly soilDepthCm: number | null;
  readonly yieldGPerM2: number | null;
  /** What the harvest of that yield takes away. */
  readonly removedNitrogenMgPerM2: number | null;
  readonly removedPhosphateMgPerM2: number | null;
  /** What its residues leave to a following crop of the same year. */
  readonly residueMgPerM2: number | null;
  readonly source: SourceKey;
  readonly contentsSource: SourceKey;
};

export type CropDemands = {
  /** None where the tables do not name the crop. */
  readonly demands: readonly Demand[];
  /** The most available nitrogen that English rules allow the crop; null where none was found. */
  readonly ceiling: { readonly mgPerM2: number; readonly source: SourceKey } | null;
};

/**
 * What a crop is officially said to demand and to remove.
 *
 * Method: 1 kg/ha is 100 mg/m² and 1 dt/ha is 10 g/m²; removal is the reference yield times the content of what is
 * harvested, each rounded once.
 *
 * @param cropKey  a crop of the catalogue
 * @returns        a row for each kind of the crop that the tables name, in their order; none is invented
 * @source         Germany, Düngeverordnung, Anlage 4 and 7; GOV.UK, most nitrogen by crop
 * @example        demandOf('leek') → 25,000 mg/m² in all, 6,000 g/m² of leeks, which take away 15,000 mg N and 4,800 mg
 *                 P2O5
 */
export function demandOf(cropKey: string): CropDemands {
  const ceiling = nitrogenCeilingOf(cropKey);
  return {
    demands: cropDemandsOf(cropKey).map(demandOfRow),
    ceiling: ceiling ? { mgPerM2: ceiling.kgPerHa * 100, source: ceiling.source } : null,
  };
}

/** One row of the tables for a square metre, as `demandOf` gives it. */
export function demandOfRow(row: CropDemand): Demand {
  // What is not harvested removes nothing, and a first year's yield of 0 is no harvest.
  const removed = (kgPer100Dt: number | null) =>
    row.yieldDtPerHa && kgPer100Dt !== null ? Math.round(row.yieldDtPerHa * kgPer100Dt) : null;
  return {
    name: row.name,
    totalNitrogenMgPerM2: times(row.demandKgPerHa, 100),
    soilDepthCm: row.soilDepthCm,
    yieldGPerM2: times(row.yieldDtPerHa, 10),
    removedNitrogenMgPerM2: removed(row.nitrogenKgPer100Dt),
    removedPhosphateMgPerM2: removed(row.phosphateKgPer100Dt),
    residueMgPerM2: times(row.residueKgPerHa, 100),
    source: row.source,
    contentsSource: row.contentsSource,
  };
}

function times(value: number | null, factor: number): number | null {
  return value === null ? null : value * factor;
}
