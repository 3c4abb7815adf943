import type { LoadUnit } from '@/lib/domain/quantity/load-mass';

/** So many loads, as mails say it: bales where a load is a bale. */
export function countOf(loads: number, unit: LoadUnit): string {
  const one = unit === 'bale' ? 'bale' : 'load';
  return `${loads === 1 ? 'one' : loads} ${loads === 1 ? one : `${one}s`}`;
}
