import { brassicasAfterLegumes } from './rules/brassicas-after-legumes';
import { potatoesOffLime } from './rules/potatoes-off-lime';
import { rootsOffManure } from './rules/roots-off-manure';
import type { Advice, Rule, Succession } from './rules/rule';
import { standingApart } from './rules/standing-apart';

/** Every general rule, in the order in which they are shown. */
const rules: readonly Rule[] = [brassicasAfterLegumes, rootsOffManure, potatoesOffLime, standingApart];

/**
 * What the general rules say against a crop on some ground in a season.
 *
 * @param shown  the rules that the society wants to hear of
 * @returns      one entry for each rule that speaks, with its ground [cm²], 0 < area ≤ the footprint's
 * @source       each rule's own; see the catalogue
 * @example      carrots for 2027 on ground half of which was manured for 2027 → roots-off-manure on that half
 */
export function advise(succession: Succession, shown: readonly string[]): Advice[] {
  return rules
    .filter(({ id }) => shown.includes(id))
    .map(({ id, check }) => ({ rule: id, areaCm2: check(succession) }))
    .filter(({ areaCm2 }) => areaCm2 > 0);
}
