import { hostGroupName, isHostGroup } from '@/lib/domain/catalogue/host-groups';
import { ruleOf, type SuccessionRule, successionRules } from '@/lib/domain/catalogue/succession-rules';
import { troubleName } from '@/lib/domain/catalogue/troubles';
import type { CourseCost, Level } from '@/lib/domain/course/cost';
import { formatArea } from '@/lib/domain/quantity/area';
import type { Units } from '@/lib/domain/quantity/length';

/** A rule of a plan's cost in words: a break, a trouble's break, or advice. */
export function ruleWords(rule: string): string {
  if (isHostGroup(rule)) return `${hostGroupName(rule)}: the break is not kept`;
  if (rule.startsWith('trouble ')) return `${troubleName(rule.slice(8))} was found there: its longer break is not kept`;
  const known = successionRules.find(({ key }) => key === rule);
  return known ? `Not so here: ${ruleOf(known.key as SuccessionRule['key']).name.toLowerCase()}` : rule;
}

/** What the planner is at, in words. */
export function progressWords(at: Level | 'conflict'): string {
  if (at === 'rules') return 'looking for the plan that breaks the least';
  if (at === 'shortfall') return 'among those, giving every crop its ground';
  if (at === 'order') return 'among those, keeping your order and preferences';
  if (at === 'turns') return 'among those, evening out the turns';
  if (at === 'moves') return 'among those, changing little of the board';
  return 'finding out which of your wishes clash';
}

const names: Record<Level, string> = {
  rules: 'breaks and rules',
  shortfall: 'ground wanted and lacking, over all seasons',
  order: 'out of your order or preference',
  turns: 'between the fullest and the emptiest autumn',
  moves: 'other than on the board',
};

/** A level of a plan's cost in words. */
export function levelWords(level: Level): string {
  return names[level];
}

/** A level's cost: an area, except that rules are weighed by how hard they are. */
export function costWords(level: Level, cost: CourseCost, units: Units): string {
  if (cost[level] === 0) return 'none';
  return level === 'rules' ? 'see below' : formatArea(cost[level], units);
}
