import { rateIn } from '@/lib/domain/quantity/area-rate';
import { squareYardCm2 } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';
import type { Piece } from '@/lib/domain/trial/piece-of-bed';
import type { TrialState } from '@/lib/domain/trial/trial-state';
import { yieldUnit } from './yield-words';

const states: Record<TrialState, string> = {
  joining: 'open for joining',
  drawing: 'joining closed',
  running: 'laid out',
  reported: 'reported',
  'too-few': 'too few joined',
  'called-off': 'called off',
};

/** Where a trial stands, in words. */
export function trialStateWords(state: TrialState): string {
  return states[state];
}

const pieces: Record<Piece, string> = { whole: '', first: ', first half', second: ', second half' };

/** A piece of ground by its bed's name: `3:first` is the first half of bed 3. */
export function pieceWords(named: string): string {
  const at = named.lastIndexOf(':');
  const piece = pieces[named.slice(at + 1) as Piece] ?? '';
  return `bed ${named.slice(0, at)}${piece}`;
}

type Measure = 'grams' | 'pieces';

/** What a trial's results are told in. */
export function trialUnit(measure: Measure, units: Units): string {
  if (measure === 'grams') return yieldUnit(units);
  return units === 'metric' ? 'pieces/m²' : 'pieces/sq yd';
}

/** A result in that unit, from grams or pieces on a square metre; differences keep their sign. */
export function trialValue(perM2: number, measure: Measure, units: Units): number {
  if (perM2 === 0) return 0;
  const value = Math.abs(perM2);
  if (measure === 'grams') return Math.sign(perM2) * rateIn(value, yieldUnit(units));
  return units === 'metric' ? perM2 : (perM2 * squareYardCm2) / 10_000;
}

const figures = new Intl.NumberFormat('en-GB', { minimumFractionDigits: 2, maximumFractionDigits: 2 });

/** The same in figures, with a true minus. */
export function trialFigure(perM2: number, measure: Measure, units: Units): string {
  return figures.format(trialValue(perM2, measure, units)).replace('-', '−');
}
