import type { SourceKey } from './sources';

/** One published account of how a trouble dwindles while no host stands. */
export type Persistence = { readonly trouble: string; readonly source: SourceKey } & (
  | { readonly kind: 'half-life'; readonly years: number }
  /** Lost each year, from the least to the most that was seen [percent]. */
  | { readonly kind: 'yearly-loss'; readonly leastPercent: number; readonly mostPercent: number }
  /** It is known to live so long at least, and no rate was given. */
  | { readonly kind: 'lives'; readonly years: number }
);

// biome-ignore format: one account a line
export const persistence: readonly Persistence[] = [
  { trouble: 'clubroot', kind: 'half-life', years: 3.6, source: 'wallenhammar' },
  // Of light infestations 95 to 99 % of the spores died over a break of two years: a yearly loss of 77.6 to 90 %.
  { trouble: 'clubroot', kind: 'yearly-loss', leastPercent: 77.6, mostPercent: 90, source: 'canola-council' },
  { trouble: 'clubroot', kind: 'lives', years: 17, source: 'wallenhammar' },
  { trouble: 'white-rot', kind: 'lives', years: 20, source: 'uc-ipm-onion' },
  { trouble: 'potato-eelworm', kind: 'yearly-loss', leastPercent: 11, mostPercent: 69, source: 'pcn-thesis' },
  { trouble: 'potato-eelworm', kind: 'lives', years: 20, source: 'sasa-pcn' },
  { trouble: 'beet-eelworm', kind: 'yearly-loss', leastPercent: 15, mostPercent: 61, source: 'westerdahl' },
  // 4 % of the resting bodies lived after seven years: a yearly loss of 36.9 %.
  { trouble: 'verticillium', kind: 'yearly-loss', leastPercent: 36.9, mostPercent: 36.9, source: 'negev-verticillium' },
  { trouble: 'white-mould', kind: 'lives', years: 5, source: 'pnw-lettuce' },
  { trouble: 'pea-foot-rot', kind: 'lives', years: 10, source: 'pgro-foot-rot' },
  { trouble: 'bean-eelworm', kind: 'lives', years: 10, source: 'pgro-36' },
  { trouble: 'onion-eelworm', kind: 'lives', years: 5, source: 'eelworm-dormant' },
];

/** The published accounts of a trouble. */
export function persistenceOf(trouble: string): readonly Persistence[] {
  return persistence.filter((account) => account.trouble === trouble);
}
