import type { HarvestRecord, Yield } from '@/lib/domain/harvest/yield-per-area';
import { squareYardCm2 } from '@/lib/domain/quantity/area';
import { rateIn } from '@/lib/domain/quantity/area-rate';
import type { Units } from '@/lib/domain/quantity/length';
import { formatMassIn } from '@/lib/domain/quantity/mass';

/** How much it was: a weight in the member's units, or a count. */
export function amountWords(measure: HarvestRecord['measure'], amount: number, units: Units): string {
  if (amount === 0) return 'nothing';
  return measure === 'grams' ? formatMassIn(amount, units) : amount.toLocaleString('en-GB');
}

/** An amount as it is typed again, to the gram. */
export function typedAgain(measure: HarvestRecord['measure'], amount: number, units: Units): string {
  if (measure === 'pieces') return String(amount);
  return units === 'metric' ? `${amount / 1000} kg` : `${amount} g`;
}

/** What a square metre or yard gave; all in one unit, so that figures can be compared. */
export function yieldWords({ measure, amount, areaCm2 }: Omit<Yield, 'harvests'>, units: Units): string {
  if (amount === 0) return 'nothing';
  const perM2 = (amount * 10_000) / areaCm2;
  if (measure === 'grams') return weightWords(perM2, units);
  const [pieces, unit] = units === 'metric' ? [perM2, 'm²'] : [(amount * squareYardCm2) / areaCm2, 'sq yd'];
  return `${pieces.toLocaleString('en-GB', { maximumSignificantDigits: pieces < 10 ? 2 : 3 })} on 1 ${unit}`;
}

/** A yield by weight. */
export function weightWords(gPerM2: number, units: Units): string {
  return `${plain(gPerM2, units)} ${yieldUnit(units)}`;
}

/** A printed range of yields, in figures of `yieldUnit`. */
export function rangeFigures(leastGPerM2: number, mostGPerM2: number, units: Units): string {
  const [least, most] = [plain(leastGPerM2, units), plain(mostGPerM2, units)];
  return least === most ? least : `${least} to ${most}`;
}

function plain(gPerM2: number, units: Units): string {
  const value = rateIn(gPerM2, yieldUnit(units));
  if (value < 0.005) return 'under 0.01';
  return value.toLocaleString('en-GB', { maximumFractionDigits: value < 1 ? 2 : 1 });
}

/** What yields are told in. */
export function yieldUnit(units: Units) {
  return units === 'metric' ? 'kg/m²' : 'lb/sq yd';
}

/** The season of a planting, or since when it stands. */
export function seasonWords({ firstSeason, lastSeason }: { firstSeason: number; lastSeason: number }): string {
  return lastSeason > firstSeason ? `since ${firstSeason}` : `season ${firstSeason}`;
}
