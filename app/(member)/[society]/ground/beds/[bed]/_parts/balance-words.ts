import { rangeWords } from '@/app/_ui/nutrient-words';
import type { BalanceReason } from '@/lib/domain/nutrients/balance';
import type { Units } from '@/lib/domain/quantity/length';

type Measured = Extract<BalanceReason, { readonly byMgPerM2: number }>;

/** What a balance says, in sentences: once for each thing, however many kinds of the crop the tables name. */
export function balanceWords(reasons: readonly BalanceReason[], kinds: number, units: Units): string[] {
  const measured = new Map<string, Measured[]>();
  for (const reason of reasons.filter((one) => 'byMgPerM2' in one)) {
    const key = `${reason.code} ${'nutrient' in reason ? reason.nutrient : ''}`;
    measured.set(key, [...(measured.get(key) ?? []), reason]);
  }
  return [
    ...reasons.flatMap((reason) => ('byMgPerM2' in reason ? [] : [plainWords(reason)])),
    ...[...measured.values()].map((alike) => measuredWords(alike, kinds, units)),
  ];
}

function plainWords(reason: Exclude<BalanceReason, Measured>): string {
  switch (reason.code) {
    case 'no-official-demand':
      return 'The official tables do not name this crop, so its demand is not known.';
    case 'no-official-removal':
      return 'What its harvest takes away is not known.';
    case 'demand-counts-the-soil':
      return 'The demand is no dose: it is all that the crop must find, and what the soil gives of it nobody has measured here.';
    case 'supply-not-known':
      return `What the dressings bring of ${reason.nutrient} is not known.`;
    case 'last-year-not-known':
      return 'What last year’s dressings left is not known: the supply is the least that it can be.';
  }
}

function measuredWords(alike: readonly Measured[], kinds: number, units: Units): string {
  const amounts = alike.map(({ byMgPerM2 }) => byMgPerM2);
  const by = rangeWords({ leastMgPerM2: Math.min(...amounts), mostMgPerM2: Math.max(...amounts) }, units);
  const names = alike.flatMap((one) => ('name' in one ? [one.name.toLowerCase()] : []));
  const kind = names.length && names.length < kinds ? ` (as ${names.join(', ')})` : '';
  const [first] = alike;
  switch (first?.code) {
    case 'over-demand':
      return `The dressings alone bring ${by} more nitrogen than the whole demand${kind}.`;
    case 'over-ceiling':
      return `The dressings alone bring ${by} more nitrogen than English rules let a farm give this crop.`;
    case 'less-than-removed':
      return `At the most they bring ${by} less ${first.nutrient} than the harvest takes away${kind}.`;
    case 'more-than-removed':
      return `At the least they bring ${by} more ${first.nutrient} than the harvest takes away${kind}.`;
    default:
      return '';
  }
}
