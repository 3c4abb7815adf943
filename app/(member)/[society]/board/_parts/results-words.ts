import { addDays, type CalendarDate, makeDate } from '@/lib/domain/calendar/calendar-date';
import { formatMonthDay } from '@/lib/domain/calendar/month-day';
import type { Question } from '@/lib/domain/comparison/bed-result';
import { weeksInBand } from '@/lib/domain/comparison/begun-weeks';
import type { ToldBeds, ToldContrast } from '@/lib/domain/comparison/compare-beds';
import type { Units } from '@/lib/domain/quantity/length';
import { rateIn } from '@/lib/domain/quantity/area-rate';
import type { ResultsState } from '@/lib/usecases/notes/results-state';
import { yieldUnit } from '@/app/_ui/yield-words';

/** What beds are told apart by. */
export const questionWords: Record<Question, string> = {
  digging: 'double dug or not',
  manure: 'manured for the season or not',
  'years-since': 'years since the last of its group',
  sowing: 'when it was sown or planted',
  variety: 'variety',
  season: 'season',
};

const groups: Readonly<Record<string, string>> = {
  double: 'double dug',
  'not-double': 'dug another way',
  manured: 'manured for the season',
  none: 'not manured for the season',
  '1-2': '1 or 2 years since its group',
  '3': '3 years since its group',
  '4+': '4 years or more since its group',
};

/** What the beds of one group have in common. */
export function groupWords(
  question: Question,
  key: string,
  { season, varietyNames }: { season: number | null; varietyNames: Readonly<Record<string, string>> },
): string {
  if (question === 'variety') return varietyNames[key] ?? key;
  if (question === 'sowing') return weeksWords(key, season ?? 2001);
  return groups[key] ?? key;
}

// 'sown before 41': how, the year before, the first week of the band.
function weeksWords(key: string, season: number): string {
  const [how = '', ...rest] = key.split(' ');
  const first = Number(rest.at(-1));
  const isBefore = rest.length > 1;
  const from = addDays(makeDate(isBefore ? season - 1 : season, 1, 1), (first - 1) * 7);
  const to = addDays(from, weeksInBand * 7 - 1);
  return `${how} ${plainDay(from)} to ${plainDay(to)}${isBefore ? ', the year before' : ''}`;
}

// A band never begins or ends on the day that not every year has.
function plainDay(day: CalendarDate): string {
  return formatMonthDay(day.slice(5));
}

/** A yield in the reader's units. */
export function yieldIn(gPerM2: number, units: Units): number {
  return gPerM2 === 0 ? 0 : Math.sign(gPerM2) * rateIn(Math.abs(gPerM2), yieldUnit(units));
}

/** The same as a figure of two, without its unit. */
export function yieldFigure(gPerM2: number, units: Units): string {
  return figure.format(yieldIn(gPerM2, units)).replace('-', '−');
}
const figure = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 2 });

/** What a chart of groups shows, in sentences. */
export function groupSays(name: string, { values, mean }: ToldBeds, units: Units): string {
  const [least = 0, most = 0] = [values[0], values.at(-1)];
  const middle = mean === null ? '' : `, on average ${yieldFigure(mean, units)}`;
  return `${capital(name)}: ${plotsWords(values.length)}, from ${yieldFigure(least, units)} to ${yieldFigure(most, units)}${middle}.`;
}

/** What can be said of two groups, and what can't: never a bare winner. */
export function contrastSays(
  { counts: [one, other], by, low, high, hiddenBelow, verdict }: ToldContrast,
  [first, second]: readonly [string, string],
  units: Units,
): string {
  const head = `${capital(first)} against ${second}: `;
  if (verdict === 'too-few') return `${head}too few plots to reckon a difference.`;
  if (low === null || high === null || hiddenBelow === null)
    return `${head}all differ alike, which says nothing of how far others would.`;
  const of = by === 'pairs' ? `on the ${one} plots that had both` : `of ${one} and ${other} plots`;
  const between = `${signed(low, units)} and ${signed(high, units)} ${yieldUnit(units)}`;
  const told = `${head}${of}, the difference lies between ${between}. `;
  if (verdict === 'cannot-tell')
    return `${told}That includes none: ${by === 'pairs' ? one : one + other} plots can’t tell. A difference smaller than ${yieldFigure(hiddenBelow, units)} would not have shown.`;
  const more = verdict === 'likely-more' ? first : second;
  return `${told}Here “${more}” likely gave more; whether that was the cause, these plots can’t tell.`;
}

function signed(gPerM2: number, units: Units): string {
  return `${gPerM2 > 0 ? '+' : ''}${yieldFigure(gPerM2, units)}`;
}

/** A page of results in a few words. */
export function resultsName({ cropName, season, question }: ResultsState): string {
  const when = question === 'season' || season === null ? '' : ` of ${season}`;
  return `${cropName.toLocaleLowerCase('en-GB')}${when}, by ${questionWords[question]}`;
}

/** What it says just now, in a sentence. */
export function resultsNow({ plots, verdicts }: ResultsState): string {
  if (plots === 0) return 'withheld: of fewer than three neighbours';
  const sure = verdicts.filter((one) => one === 'likely-more' || one === 'likely-less').length;
  if (sure === 0) return `${plotsWords(plots)}; so few can’t tell a difference`;
  return `${plotsWords(plots)}; ${sure === 1 ? 'one difference is' : `${sure} differences are`} likely, the cause not known`;
}

/** So many plots. */
export function plotsWords(count: number): string {
  return count === 1 ? '1 plot' : `${count} plots`;
}

function capital(words: string): string {
  return words.charAt(0).toLocaleUpperCase('en-GB') + words.slice(1);
}
