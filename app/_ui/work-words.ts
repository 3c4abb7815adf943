import { dayWords } from './delivery-words';

type Wait = {
  readonly cropName: string;
  readonly earliestOn: string;
  readonly whileGrowing: boolean;
  readonly isWorstCase: boolean;
};
type Clash = { readonly code: string; readonly order?: string; readonly earliestOn?: string };
type Logged = { readonly kind: string; readonly waits: readonly Wait[]; readonly clashes: readonly Clash[] };

/** What was logged, and what follows from it for the harvest and for lime. */
export function loggedWords({ kind, waits, clashes }: Logged): string {
  const logged = kind === 'manured' ? 'Logged. The turn is reset there.' : 'Logged.';
  return [logged, ...waits.map(waitWords), ...clashWords(clashes)].join(' ');
}

/** Until when a harvest waits. */
export function waitWords({ cropName, earliestOn, whileGrowing, isWorstCase }: Wait): string {
  const crop = cropName.toLowerCase();
  if (isWorstCase)
    return `When ${crop} may be harvested is not known: neither the day nor the age of its manure is on record. At the worst, not before ${dayWords(earliestOn)}.`;
  const growing = whileGrowing ? ', which had manure while it grew,' : '';
  return `Take no harvest of ${crop}${growing} before ${dayWords(earliestOn)}.`;
}

/** That lime and manure came too close, or that nobody can say: once for each kind of clash, with its latest day. */
export function clashWords(clashes: readonly Clash[]): string[] {
  const latest = new Map<string, Clash>();
  for (const clash of clashes) {
    const kind = clash.order ?? clash.code;
    const before = latest.get(kind);
    if (!before || (clash.earliestOn ?? '') > (before.earliestOn ?? '')) latest.set(kind, clash);
  }
  return [...latest.values()].map(sentence);
}

function sentence({ order, earliestOn }: Clash): string {
  if (!order || !earliestOn)
    return 'Lime and manure are both logged for one season here, and a day is missing: whether they kept apart is not known.';
  if (order === 'same-day')
    return 'Lime and manure went on together: the lime drives the nitrogen of the manure off as ammonia.';
  const day = dayWords(earliestOn);
  return order === 'lime-first'
    ? `Manure came too soon after lime: from ${day} on it would have kept its nitrogen. Lime drives it off as ammonia.`
    : `Lime came too soon after manure: from ${day} on it would have kept its distance. It drives the manure’s nitrogen off as ammonia.`;
}
