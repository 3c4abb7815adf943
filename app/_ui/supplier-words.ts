import type { UnitOfSupplier } from '@/lib/domain/delivery/supplier-unit';

/** So many of a supplier's units: 5 trailer loads of 6,000 L; 12 m³; 3 tonnes; 20 bales of 13 kg. */
export function unitsWords(one: UnitOfSupplier, units: number): string {
  const count = units.toLocaleString('en-GB');
  if (one.unit === 'trailer')
    return `${count} trailer ${units === 1 ? 'load' : 'loads'} of ${one.trailerLitres.toLocaleString('en-GB')} L`;
  if (one.unit === 'bales')
    return `${count} ${units === 1 ? 'bale' : 'bales'} of ${(one.baleMassG / 1000).toLocaleString('en-GB')} kg`;
  return one.unit === 'm3' ? `${count} m³` : `${count} ${units === 1 ? 'tonne' : 'tonnes'}`;
}

/** The unit by itself: a trailer load, m³, tonne, bale. */
export function unitWord({ unit }: UnitOfSupplier, units: number): string {
  if (unit === 'm3') return 'm³';
  const words = { trailer: 'trailer load', tonnes: 'tonne', bales: 'bale' } as const;
  return `${words[unit]}${units === 1 ? '' : 's'}`;
}

/** Pence as pounds. */
export function poundsWords(minor: number): string {
  return `£${(minor / 100).toLocaleString('en-GB', { minimumFractionDigits: 2, maximumFractionDigits: 2 })}`;
}

/** What one costs, or what is given for it. */
export function costWords(priceMinor: number | null, thanks: string | null): string {
  const parts = [priceMinor === null ? null : priceMinor === 0 ? 'free' : poundsWords(priceMinor), thanks];
  return parts.filter(Boolean).join(' and ') || 'nothing agreed';
}

/** What is given in thanks for so many of a supplier's units. */
export function thanksWords(thanks: string | null, units: number): string | null {
  return thanks && units > 1 ? `${thanks} for each of ${units}` : thanks;
}
