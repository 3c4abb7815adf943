import type { PacketState } from '@/lib/domain/seed/packet-state';
import type { SeedOrderState } from '@/lib/domain/seed/order-steps';
import type { SeedMass } from '@/lib/domain/seed/seed-mass';
import type { SeedUnit } from '@/lib/domain/seed/seed-unit';
import type { MarkKind } from './mark';

/** So much seed in words: "250 seeds", "1.5 g", "25 sets". */
export function seedAmountWords(unit: SeedUnit, amount: number): string {
  if (unit === 'milligrams') return `${(amount / 1000).toLocaleString('en-GB', { maximumFractionDigits: 3 })} g`;
  const word = unit === 'seeds' ? 'seed' : 'set';
  return `${amount.toLocaleString('en-GB')} ${amount === 1 ? word : `${word}s`}`;
}

/** A weight of seed as far as it can be told: to a tenth of a gram, or to two figures below one. */
export function seedMassWords({ massMg }: Pick<SeedMass, 'massMg'>): string {
  const grams = massMg / 1000;
  return `${grams >= 1 ? grams.toFixed(1) : Number(grams.toPrecision(2))} g`;
}

const states: Readonly<Record<SeedOrderState, string>> = {
  planned: 'not open yet',
  open: 'open for lists',
  closed: 'lists closed',
  ordered: 'ordered',
  arrived: 'here, to be fetched',
  settled: 'settled',
  'called-off': 'called off',
};

/** An order's state in words. */
export function seedOrderWords(state: SeedOrderState): string {
  return states[state];
}

const packets: Readonly<Record<PacketState['code'], { readonly word: string; readonly mark: MarkKind }>> = {
  tested: { word: 'tested', mark: 'kept' },
  sound: { word: 'sound', mark: 'kept' },
  'test-first': { word: 'test first', mark: 'not-known' },
  past: { word: 'past', mark: 'short' },
  'year-unknown': { word: 'year unknown', mark: 'not-known' },
  'life-unknown': { word: 'life unknown', mark: 'not-known' },
};

/** A packet's state as a word and its look. */
export function packetMark({ code }: PacketState): { readonly word: string; readonly mark: MarkKind } {
  return packets[code];
}

/** Why a packet is in that state, for a season. */
export function packetWhy({ code, ageYears, life }: PacketState, season: number, testedPercent: number | null): string {
  const years = (count: number) => `${count} ${count === 1 ? 'year' : 'years'}`;
  const age = ageYears === null ? '' : `${ageYears === 0 ? 'packed for' : `${years(ageYears)} old in`} ${season}`;
  if (code === 'tested') return `${testedPercent} of 100 came up in your test; it counts by that.`;
  if (code === 'year-unknown') return 'Nobody can read when it was packed, so it is not counted. Test ten of them.';
  if (code === 'life-unknown')
    return `${age}; nobody prints how long it lives, so it is not counted. Test ten of them.`;
  const lives = `kept cool and dry it lives about ${years(life?.years ?? 0)}`;
  if (code === 'sound') return `${age}; ${lives}.`;
  if (code === 'test-first') return `${age}; ${lives}, so this is its last: test ten of them first.`;
  return `${age}; ${lives}, so it is not counted. Test ten of them before you throw it away.`;
}
