import 'server-only';
import type { HarvestRecord } from '@/lib/domain/harvest/yield-per-area';
import type { Units } from '@/lib/domain/quantity/length';
import { readMass } from '@/lib/domain/quantity/mass';
import { refuse } from '../refusal';

/** More was never lifted off a bed at once [kg]; [pieces]. */
const mostKg = 10_000;
const mostPieces = 100_000;

/** The amount that was typed, in whole grams or pieces. */
export function typedAmount(text: string, measure: HarvestRecord['measure'], units: Units): number {
  return measure === 'grams' ? weight(text, units) : count(text);
}

function weight(text: string, units: Units): number {
  const massG = readMass(text, units);
  if (massG !== null && massG <= mostKg * 1000) return massG;
  return refuse('harvest-weight-wrong', { field: 'amount', numbers: { most: mostKg.toLocaleString('en-GB') } });
}

function count(text: string): number {
  const pieces = /^\d{1,9}$/.test(text) ? Number(text) : Number.NaN;
  if (pieces <= mostPieces) return pieces;
  return refuse('harvest-count-wrong', { field: 'amount', numbers: { most: mostPieces.toLocaleString('en-GB') } });
}
