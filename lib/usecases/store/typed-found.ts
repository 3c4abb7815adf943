import type { LotRecord } from '@/lib/data/store-lot';
import type { Units } from '@/lib/domain/quantity/length';
import { type Found, lotNow } from '@/lib/domain/store/go-over';
import type { BadWhy } from '@/lib/domain/store/lot';
import { formatAmount, readAmount } from '@/lib/domain/store/lot-amount';
import { refuse } from '../refusal';

type Typed = { readonly used: string; readonly bad: string; readonly badWhy: BadWhy | null; readonly sound: string };

/** What was typed of a going over, in the lot's measure; refused beside its field where it is more than there was. */
export function readFound({ badWhy, ...typed }: Typed, lot: LotRecord, units: Units): Omit<Found, 'on'> {
  const { measure } = lot;
  const there = lotNow(lot).sound;
  const told = (amount: number) => formatAmount(amount, measure, units);
  const read = (field: 'used' | 'bad' | 'sound', all: number) => {
    if (typed[field] === '') return null;
    const amount = readAmount(typed[field], measure, units);
    if (amount === null) refuse('found-wrong', { field, numbers: { measure } });
    // Whoever types the weight that the page told means all of it, to the gram.
    return told(amount) === told(all) ? all : amount;
  };
  const used = read('used', there) ?? 0;
  if (used > there) refuse('more-used-than-there', { field: 'used', numbers: { there: told(there) } });
  const bad = read('bad', there - used) ?? 0;
  const left = there - used - bad;
  if (left < 0) refuse('more-bad-than-left', { field: 'bad', numbers: { left: told(there - used) } });
  const sound = read('sound', left);
  if (sound !== null && sound > left) refuse('more-sound-than-left', { field: 'sound', numbers: { left: told(left) } });
  if (sound !== null && sound < left && measure === 'pieces')
    refuse('sound-does-not-add-up', { field: 'sound', numbers: { left: told(left) } });
  return { used, bad, badWhy: bad > 0 ? badWhy : null, sound };
}
