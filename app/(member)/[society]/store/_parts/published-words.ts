import type { Curing } from '@/lib/domain/catalogue/curings';
import type { StorageLife } from '@/lib/domain/catalogue/storage-lives';
import { formatTemperature } from '@/lib/domain/quantity/typed-temperature';
import type { LifePrior } from '@/lib/domain/store/life-prior';

/** A printed life as it is printed. */
export function lifeWords({ least, most, printedIn }: Pick<StorageLife, 'least' | 'most' | 'printedIn'>): string {
  if (least === null) return 'not said';
  if (most === null) return `${least} ${printedIn} or more`;
  return least === most ? `${least} ${printedIn}` : `${least} to ${most} ${printedIn}`;
}

type Air = Pick<StorageLife, 'fromTenthC' | 'toTenthC' | 'fromRh' | 'toRh'>;

/** The warmth and dampness that an account wants. */
export function conditionsWords({ fromTenthC, toTenthC, fromRh, toRh }: Air): string {
  const warmth = between(fromTenthC, toTenthC, formatTemperature);
  const damp = between(fromRh, toRh, (percent) => `${percent} %`);
  return [warmth, damp && `${damp} humidity`].filter(Boolean).join(', ') || 'not said';
}

function between(from: number | null, to: number | null, told: (value: number) => string): string {
  if (from === null) return to === null ? '' : `up to ${told(to)}`;
  if (to === null) return `${told(from)} or more`;
  return from === to ? told(from) : `${told(from)} to ${told(to)}`;
}

/** For how long a kind is cured. */
export function curingDaysWords({ leastDays, mostDays }: Pick<Curing, 'leastDays' | 'mostDays'>): string {
  if (mostDays === 0) return 'not cured';
  return leastDays === mostDays ? `${leastDays} days` : `${leastDays} to ${mostDays} days`;
}

/** What moved the printed ends. */
export const expectedReasons: Readonly<Record<LifePrior['reasons'][number], string>> = {
  'one-figure': 'One figure is printed; half as much again either way is allowed for.',
  'no-end': 'No end is printed; half as much again is allowed for.',
  elsewhere: 'Your place is not known to be as that account wants it, so the shorter end is halved.',
  damaged: 'It was damaged when it was put in, and is held to live a quarter to a half as long.',
  uncured: 'It was not cured, so the shorter end is halved.',
  unripe: 'It was unripe, so the shorter end is halved.',
};
