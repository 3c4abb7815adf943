import type { ManureState } from '../catalogue/harvest-intervals';
import type { ManureAge } from '../catalogue/nitrogen-availability';

/**
 * The age of manure in the nitrogen tables, from how far it has come.
 *
 * @param state  raw, young, rotted or composted
 * @returns      fresh for raw alone: the tables call old what was stored for three months or longer
 * @source       Defra, Fertiliser Manual (RB209), 8th edition, 2010
 * @example      manureAgeOf('young') → 'old'
 */
export function manureAgeOf(state: ManureState): ManureAge {
  return state === 'raw' ? 'fresh' : 'old';
}
