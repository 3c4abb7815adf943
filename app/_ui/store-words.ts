import type { CuringClock } from '@/lib/domain/store/curing-clock';
import type { EnoughTill } from '@/lib/domain/store/enough-till';
import type { UseFirstReason } from '@/lib/domain/store/first-to-use';
import type { BadWhy, PlaceKind, StoreLot } from '@/lib/domain/store/lot';
import { formatAmount } from '@/lib/domain/store/lot-amount';
import { keepingOf } from '@/lib/domain/catalogue/keepings';
import type { StoreLimit } from '@/lib/domain/catalogue/store-limits';
import type { LotCondition } from '@/lib/domain/catalogue/store-model';
import type { Units } from '@/lib/domain/quantity/length';
import { formatTemperature } from '@/lib/domain/quantity/typed-temperature';
import { dayWords } from './delivery-words';

export const placeKindWords: Readonly<Record<PlaceKind, string>> = {
  shed: 'shed',
  clamp: 'clamp',
  string: 'strings',
  frame: 'frame',
  room: 'room',
  cellar: 'cellar',
  other: 'somewhere else',
};

export const badWhyWords: Readonly<Record<BadWhy, string>> = {
  mould: 'mould',
  rot: 'rot',
  sprouted: 'sprouted',
  shrivelled: 'shrivelled',
  frosted: 'frosted',
  gnawed: 'gnawed',
  other: 'something else',
};

export const conditionWords: Readonly<Record<LotCondition, string>> = {
  sound: 'sound',
  damaged: 'damaged: split, cut or bruised',
  uncured: 'not cured',
  unripe: 'unripe',
};

/** A lot's name: what it is, and which. */
export function lotName({
  keepingKey,
  variety,
}: {
  readonly keepingKey: string;
  readonly variety: string | null;
}): string {
  const name = keepingOf(keepingKey)?.name ?? keepingKey;
  return variety ? `${name}, ${variety}` : name;
}

/** An amount of a lot; what is counted says so where nothing else does. */
export function amountWords(amount: number, measure: StoreLot['measure'], units: Units): string {
  return formatAmount(amount, measure, units);
}

/** So many days, in words. */
export function daysWords(days: number): string {
  return `${days} ${days === 1 ? 'day' : 'days'}`;
}

/** How a round stands: due today, late, with rounds missed, or next on a day. */
export function roundWords(round: {
  readonly isDue: boolean;
  readonly daysLate: number;
  readonly missedRounds: number;
  readonly dueOn: string;
}): string {
  if (!round.isDue) return `next on ${dayWords(round.dueOn)}`;
  const missed = round.missedRounds
    ? `, ${round.missedRounds} ${round.missedRounds === 1 ? 'round' : 'rounds'} missed`
    : '';
  return round.daysLate === 0 ? 'due today' : `${daysWords(round.daysLate)} late${missed}`;
}

/** What was found at a going over: 53 sound, 5 used, 2 bad (mould). */
export function foundWords(
  found: { readonly sound: number; readonly used: number; readonly bad: number; readonly badWhy: BadWhy | null },
  measure: StoreLot['measure'],
  units: Units,
): string {
  const told = (amount: number) => amountWords(amount, measure, units);
  return [
    `${told(found.sound)} sound`,
    ...(found.used ? [`${told(found.used)} used`] : []),
    ...(found.bad ? [`${told(found.bad)} bad${found.badWhy ? ` (${badWhyWords[found.badWhy]})` : ''}`] : []),
  ].join(', ');
}

/** Why a lot is used before others. */
export function firstReasonWords(reason: UseFirstReason): string {
  if (reason.code === 'damaged') return 'It was damaged when it was put in, and does not keep';
  if (reason.code === 'unripe-in-light') return 'It was unripe: keep it in the light till it colours, and use it then';
  if (reason.code === 'near-end') {
    if (reason.medianDays === 0) return 'It is likely past its time already';
    return `It is near its end: likelier than not within ${daysWords(reason.medianDays)}`;
  }
  const usual = Math.round(reason.usualPieces * 10) / 10;
  const bad = Math.round(reason.badPieces * 10) / 10;
  return `It is losing fast: ${bad} went bad, where ${usual} would have in a middling lot of its kind`;
}

/** How a curing stands. */
export function curingWords({ state, day, readyOn, latestOn }: CuringClock): string {
  if (state === 'not-cured') return 'it is not cured: put it away as it is';
  if (state === 'curing') return `day ${day}; ready from ${dayWords(readyOn)}, by ${dayWords(latestOn)} at the latest`;
  if (state === 'ready') return `day ${day}: ready to be put away, by ${dayWords(latestOn)} at the latest`;
  return `day ${day}: too long. It should have been put away by ${dayWords(latestOn)}`;
}

const limits: Readonly<Record<StoreLimit['code'], string>> = {
  freezes: 'It freezes',
  chills: 'Cold harms it, frost or none,',
  sweetens: 'It turns sweet',
  sprouts: 'It sprouts',
};

/** What is too cold or too warm, with the limit and what the place has. */
export function warmthWords(limit: StoreLimit & { readonly placeTenthC: number }): string {
  const { code, fromTenthC, belowTenthC, placeTenthC } = limit;
  const range =
    code === 'sprouts'
      ? `from ${formatTemperature(fromTenthC ?? 0)}${belowTenthC === null ? ' on' : ` to ${formatTemperature(belowTenthC)}`}`
      : `below ${formatTemperature(belowTenthC ?? 0)}`;
  return `${limits[code]} ${range}; here it gets down to ${formatTemperature(placeTenthC)}.`;
}

type Apart = { readonly code: 'ethylene' | 'taint' | 'alone' | 'other-shelf' };

/** Why two kinds must not stand beside each other. */
export function apartWords({ code }: Apart, harmed: string, beside: string): string {
  const [one, other] = [harmed.toLowerCase(), beside.toLowerCase()];
  if (code === 'ethylene') return `${beside} give off a gas (ethylene) that spoils ${one}.`;
  if (code === 'taint') return `${harmed} and ${other} taste of each other when they stand together.`;
  if (code === 'alone') return `${harmed} and ${other} are each best kept by themselves.`;
  return `${harmed} and ${other} want different air: one warmer or damper than the other.`;
}

type Range = { readonly least: string | null; readonly median: string | null; readonly most: string | null };

/** A day that is not known but for a range: between two days, about as likely as not by a third. Never a bare day. */
export function rangeWords({ least, median, most }: Range): string {
  if (least === null) return 'not within three years';
  if (least === most) return `${dayWords(least)}, as far as that can be said`;
  const end = most === null ? 'some day beyond three years' : dayWords(most);
  const middle = median === null ? '' : `; about as likely as not by ${dayWords(median)}`;
  return `between ${dayWords(least)} and ${end}${middle}`;
}

export const enoughMark = {
  yes: { kind: 'kept', word: 'yes' },
  no: { kind: 'short', word: 'no' },
  'cannot-tell': { kind: 'not-known', word: 'can’t tell' },
} as const;

/** Why the answer is what it is. */
export function enoughWords({ reason, likelyPermille }: EnoughTill): string {
  if (reason === 'use-unknown') return 'Nobody has said how much is used a week, and nothing has been gone over yet.';
  if (likelyPermille === 0) return 'Nothing is left on that day, as good as certainly.';
  const percent = percentWords(likelyPermille ?? 0);
  if (reason === 'likely-enough') return `In ${percent} something is left on that day.`;
  if (reason === 'likely-too-little') return `Only in ${percent} is anything left on that day.`;
  return `In ${percent} something is left on that day: too near to even for a yes or a no.`;
}

/** A likelihood in cases of a hundred; never none for something, never all for less. */
export function percentWords(permille: number): string {
  if (permille >= 1000) return 'a hundred cases of a hundred';
  const percent = Math.min(99, Math.max(permille > 0 ? 1 : 0, Math.round(permille / 10)));
  return `${percent} ${percent === 1 ? 'case' : 'cases'} of a hundred`;
}

/** Tenths of a piece as they are typed. */
export function tenthsTyped(tenths: number | null): string {
  return tenths === null ? '' : String(tenths / 10);
}
