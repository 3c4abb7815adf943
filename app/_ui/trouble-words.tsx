import { citation } from '@/lib/domain/catalogue/sources';
import type { LikelyLeft } from '@/lib/domain/rotation/likely-left';

/** What is likely left of a trouble, in words that promise nothing. */
export function leftWords({ range, livesYears, sources }: LikelyLeft): string {
  const from = sources.map(citation).join('; ');
  const lives = livesYears === null ? '' : ` It has been found alive after ${livesYears} years.`;
  if (!range)
    return livesYears === null
      ? 'No published figure says how fast it dwindles.'
      : `No published rate says how fast it dwindles.${lives} (${from})`;
  const [least, most] = [permille(range.leastPermille), permille(range.mostPermille)];
  return `Of what was there, ${least} to ${most} is likely left by now. That is no all-clear: little of it can be enough.${lives} (${from})`;
}

function permille(value: number): string {
  return value < 1 ? 'under 0.1 %' : `${(value / 10).toFixed(value < 100 ? 1 : 0)} %`;
}

/** What not to carry about, wherever a trouble of the soil is shown. */
export function SoilCaution() {
  return (
    <>
      It travels in soil. Dig this ground last; clean boots, tools and barrow wheels before you leave it; carry no soil,
      plants or strings of roots off it, and put nothing of its hosts on a shared heap. Ask the society, and an adviser
      where you are not sure; some troubles must be reported by law.
    </>
  );
}
