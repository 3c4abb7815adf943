import type { Units } from '@/lib/domain/quantity/length';
import { ounceG, poundG } from '@/lib/domain/quantity/mass';

/** A weight as a field holds it, without its unit: kilograms or pounds, which readMass gives back to the gram or nearly. */
export function typedMass(massG: number, units: Units): string {
  return units === 'metric' ? String(massG / 1000) : String(Math.round((massG / poundG) * 1000) / 1000);
}

/** A small weight likewise: grams or ounces. */
export function typedSmallMass(massG: number, units: Units): string {
  return units === 'metric' ? String(massG) : String(Math.round((massG / ounceG) * 100) / 100);
}
