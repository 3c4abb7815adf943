import type { DeliveryState } from '@/lib/domain/delivery/steps';
import type { LoadUnit } from '@/lib/domain/quantity/load-mass';
import { loadMillionths } from '@/lib/domain/sharing/claim';
import type { Stage } from '@/lib/domain/sharing/entry';
import type { ShareReason } from '@/lib/domain/sharing/share-out';

const states: Record<DeliveryState, string> = {
  planned: 'planned',
  open: 'open for booking',
  closed: 'booking closed',
  tipped: 'tipped and measured',
  shared: 'shared out',
  collecting: 'being collected',
  settled: 'settled',
  called_off: 'called off',
};

/** A delivery's state in words. */
export function stateWords(state: DeliveryState): string {
  return states[state];
}

/** Loads with the right word: bales where a load is a bale. */
export function loadsWords(loads: number, unit: LoadUnit): string {
  return `${loads} ${loads === 1 ? unitWord(unit) : `${unitWord(unit)}s`}`;
}

/** What one load is called. */
export function unitWord(unit: LoadUnit): 'bale' | 'load' {
  return unit === 'bale' ? 'bale' : 'load';
}

/** A credit in loads, with its sign, to hundredths. */
export function creditWords(millionths: number): string {
  if (millionths === 0) return '0';
  const loads = millionths / loadMillionths;
  return `${loads > 0 ? '+' : '−'}${Math.abs(loads).toFixed(2)}`;
}

/** Why a share is what it is, in plain words. */
export function reasonWords(reason: ShareReason, creditBeforeMillionths: number): string {
  if (reason.code === 'met-in-full') return 'met in full';
  if (reason.code === 'already-collected') return `had collected more than its ${reason.places} places in the queue`;
  if (isLate(reason)) return lateWords(reason);
  if (reason.code === 'needs-first')
    return reason.needMet ? 'need met; the heap ended before wants' : 'no due ground; needs came first';
  const at = levelWords(reason.stage, reason.level);
  if (reason.code === 'level') return at;
  const odd = `${reason.left} left for ${reason.contenders}`;
  const owed =
    creditBeforeMillionths > 0
      ? `owed ${(creditBeforeMillionths / loadMillionths).toFixed(2)} from before`
      : 'owed more than those who missed';
  if (reason.code === 'odd-load')
    return `${at}, and an odd load (${odd}): ${reason.by === 'credit' ? owed : 'drawn by the lot'}`;
  return `${at}; the odd loads (${odd}) went to ${reason.by === 'credit' ? 'those owed more' : 'those ahead in the lot'}`;
}

function levelWords(stage: Stage, level: number): string {
  if (stage === 'needs') return level ? `level ${level} of needs` : 'no whole round of needs';
  return level ? `need met, then level ${level} of wants` : 'need met';
}

type LateReason = Extract<ShareReason, { code: `late-${string}` }>;

function isLate(reason: ShareReason): reason is LateReason {
  return reason.code.startsWith('late-');
}

function lateWords(reason: LateReason): string {
  if (reason.code === 'late-none') return 'came late; nothing was left over';
  const each = `came late: of what was left over ${reason.level} each`;
  if (reason.code === 'late-level') return each;
  const last = `the last ${reason.left} of ${reason.contenders}`;
  return reason.code === 'late-turn'
    ? `${each}, and one of ${last}, in the order of coming`
    : `${each}; ${last} went to who came sooner`;
}

/** An instant where the society lives. */
export function whenWords(instant: Date, timeZone: string): string {
  return instant.toLocaleString('en-GB', {
    timeZone,
    weekday: 'short',
    day: 'numeric',
    month: 'long',
    hour: '2-digit',
    minute: '2-digit',
  });
}

/** A day in words: Thu 3 December 2026. */
export function dayWords(day: string): string {
  return new Date(`${day}T12:00:00Z`).toLocaleDateString('en-GB', {
    timeZone: 'UTC',
    weekday: 'short',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
  });
}

/** The same in short, for a narrow column: 3 Dec 2026. */
export function shortDayWords(day: string): string {
  return new Date(`${day}T12:00:00Z`).toLocaleDateString('en-GB', {
    timeZone: 'UTC',
    day: 'numeric',
    month: 'short',
    year: 'numeric',
  });
}
