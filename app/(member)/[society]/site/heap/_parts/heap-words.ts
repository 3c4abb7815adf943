import type { Point } from '@/lib/domain/ground/segment';
import { formatDistance } from '@/lib/domain/placing/parse-distance';
import type { HeapPlacing } from '@/lib/domain/placing/place-heap';
import type { WayCode } from '@/lib/domain/placing/ways-from';
import type { Units } from '@/lib/domain/quantity/length';

const cmOf = { metric: 100, imperial: 91.44 } as const;

/** A way as it is walked, to the whole metre or yard. */
export function wayWords(cm: number, units: Units): string {
  return `${Math.round(cm / cmOf[units]).toLocaleString('en-GB')} ${unitOf(units)}`;
}

export function unitOf(units: Units): string {
  return units === 'metric' ? 'm' : 'yd';
}

/** Loads times way, in whole loaded metres or yards, without the unit. */
export function loadedWords(cm: number, units: Units): string {
  return Math.round(cm / cmOf[units]).toLocaleString('en-GB');
}

/** How much more than the best: "410 loaded metres more, 12 %". */
export function overWords(overCm: number, bestCm: number, units: Units): string {
  if (overCm === 0) return 'as good as the best';
  const percent = bestCm ? `, ${Math.round((100 * Math.abs(overCm)) / bestCm)} %` : '';
  const loaded = `loaded ${units === 'metric' ? 'metres' : 'yards'}`;
  return `${loadedWords(Math.abs(overCm), units)} ${loaded} ${overCm > 0 ? 'more' : 'less'}${percent}`;
}

/** A place by its distances from the site's corner. */
export function placeWords({ xCm, yCm }: Point, units: Units): string {
  const unit = units === 'metric' ? 'm' : 'ft';
  const [across, down] = [formatDistance(Math.abs(xCm), units), formatDistance(Math.abs(yCm), units)];
  return `${across} ${unit} ${xCm < 0 ? 'west' : 'east'} and ${down} ${unit} ${yCm < 0 ? 'north' : 'south'} of the site’s corner`;
}

/** Why there is no better place. */
export function proofWords({ basis, proof }: Pick<HeapPlacing, 'basis' | 'proof'>): string {
  const count = proof.places.toLocaleString('en-GB');
  if (proof.code === 'no-loads')
    return 'Nothing is to be wheeled to a measured plot, so no place is better than another.';
  if (proof.code === 'no-place')
    return basis === 'paths'
      ? 'No place is allowed there.'
      : 'No paths are drawn and there is no drop point, so there is no place to compare.';
  if (proof.code === 'all-compared')
    return `Every drop point was worked out: ${count}. No other place was asked about.`;
  return `Every node of the path network where it may lie was worked out: ${count}. Nodes are the ends of paths, their joints, the ends of what a lorry can drive, and where each plot is reached. Between two of them it can’t be better: from one node to the next the loaded ways together may rise and then fall, but never fall and then rise, so they are least at one of the two.`;
}

/** What is odd about a way; nothing where it goes by a path. */
export function codeWords(code: WayCode): string | null {
  if (code === 'over-ground') return 'no path reaches it: the rest is straight over the ground';
  if (code === 'paths-not-joined') return 'its path is not joined to the heap’s: the rest is straight over the ground';
  return null;
}
