import type { BioassayReason, BioassayVerdict } from '@/lib/domain/bioassay/judge-bioassay';
import type { BioassayPot } from '@/lib/domain/bioassay/record';
import type { MarkKind } from './mark';

type Verdict = BioassayVerdict['verdict'];

/** A verdict in words that promise nothing: at best nothing was seen in these pots so far. */
export function verdictWords(verdict: Verdict, isEnded: boolean): string {
  if (verdict === 'no-symptoms-seen') return 'no symptoms seen so far';
  if (verdict === 'symptoms') return 'symptoms seen';
  if (verdict === 'not-valid') return 'it says nothing';
  return isEnded ? 'ended before it could say anything' : 'under way';
}

/** Never the look of what is kept: nothing seen is no all-clear. */
export const verdictMarks: Readonly<Record<Verdict, MarkKind>> = {
  'no-symptoms-seen': 'bare',
  symptoms: 'short',
  'not-valid': 'not-known',
  'not-finished': 'not-known',
};

/** Pots as they are named on the bench: manure 1, plain 2. */
export function potName({ id }: Pick<BioassayPot, 'id'>): string {
  return id.replace('-', ' ');
}

const kinds = { test: 'with manure', control: 'without manure' } as const;
const count = (many: number, what: string) => `${many} ${many === 1 ? what : `${what}s`}`;

/** Why a test says what it says, in one sentence. */
export function bioassayReasonWords(reason: BioassayReason): string {
  switch (reason.code) {
    case 'too-few-pots':
      return `${count(reason.pots, 'pot')} ${kinds[reason.kind]}: at least ${reason.wanted} are wanted.`;
    case 'too-few-seeds':
      return `At least ${reason.wanted} seeds are wanted in every pot.`;
    case 'pots-not-read':
      return `${count(reason.pots, 'pot')} ${kinds[reason.kind]} not read yet.`;
    case 'controls-distorted':
      return `${count(reason.plants, 'plant')} without manure ${reason.plants === 1 ? 'is' : 'are'} distorted too, so something else is at work: the mix, the water or the seed.`;
    case 'controls-did-not-come-up':
      return `Without manure only ${reason.upPercent} % came up, where ${reason.wantedPercent} % are wanted: the seed or the place was poor.`;
    case 'controls-stayed-small':
      return `Without manure they grew no further than ${count(reason.trueLeaves, 'set')} of true leaves: they had too little light or warmth.`;
    case 'distorted-leaves':
      return `${count(reason.plants, 'plant')} in the manure with cupped, curled or fern-like leaves.`;
    case 'poor-emergence':
      return `${reason.upPercent} % came up in the manure, and ${reason.controlPercent} % without it.`;
    case 'behind-the-controls':
      return `In the manure they stand at ${count(reason.trueLeaves, 'set')} of true leaves; without it they have theirs.`;
    case 'seen-before-the-end':
      return 'It was seen before the end. Go on reading if you like: what was seen stands.';
    case 'salt-or-raw-compost-can-look-so':
      return 'Salt, and manure that has not rotted, can make plants look the same.';
    case 'only-what-was-in-the-pots':
      return 'That goes for what was in these pots. It is no all-clear: the heap may differ from place to place.';
    case 'still-growing':
      return `Read up to day ${reason.day}; they are still growing.`;
    case 'not-sown':
      return 'Nothing is sown yet.';
  }
}
