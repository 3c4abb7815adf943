import { settings } from '@/lib/domain/catalogue/settings';
import { settingValueWords } from '@/lib/domain/catalogue/setting-value-words';
import { dayWords } from '@/app/_ui/delivery-words';
import type { readBallot } from '@/lib/usecases/ballots/read-ballots';

type Ballot = Awaited<ReturnType<typeof readBallot.run>>['ballot'];

/** An instant where the society lives, with its year: minutes are read for a long time. */
export function whenInYear(instant: Date, timeZone: string): string {
  const how = {
    weekday: 'short',
    day: 'numeric',
    month: 'long',
    year: 'numeric',
    hour: '2-digit',
    minute: '2-digit',
  } as const;
  return instant.toLocaleString('en-GB', { timeZone, ...how });
}

/** How many hands, with the right word. */
export function handsWords(count: number): string {
  return count === 1 ? '1 hand' : `${count} hands`;
}

/** What a motion would change, and from when. */
export function ruleWords({ key, value, from }: NonNullable<Ballot['setting']>): string {
  return `“${settings[key].name}” ${settingValueWords(key, value)} from ${dayWords(from)}`;
}

/** What became of the rule that was carried. */
export function appliedWords(applied: Ballot['applied'], outcome: 'carried' | 'not-carried' | 'no-quorum'): string {
  if (outcome !== 'carried') return 'The rule stays as it was.';
  if (applied === 'set') return 'The rule was set from that day on.';
  return applied === 'window-inside-out'
    ? 'The rule was not set: by then the season’s window would have closed before it opened. Put it again.'
    : 'The rule was not set: the value is no longer within its bounds. Put it again.';
}

/** What a count came to. */
export function outcomeWords(
  outcome: 'carried' | 'not-carried' | 'no-quorum',
  carried: string | null,
  kind: string,
): string {
  if (outcome === 'no-quorum') return 'no quorum: nothing is decided';
  if (outcome === 'not-carried') return 'not carried';
  return kind === 'motion' ? 'carried' : `carried: ${carried ?? ''}`;
}

/** The rules of a count, as lines of what and how. */
export function rulesOfCount(
  {
    handsBy,
    quorum,
    carriedBy,
    kind,
    closesAt,
    entitled,
  }: Pick<Ballot, 'handsBy' | 'quorum' | 'carriedBy' | 'kind' | 'closesAt' | 'entitled'>,
  needed: number | null,
  timeZone: string,
): [string, string][] {
  return [
    ['closes', whenInYear(closesAt, timeZone)],
    ['one hand for each', handsBy === 'member' ? 'member' : 'holding, raised by any of its holders'],
    ['could be raised', entitled === null ? 'counted when it is opened' : handsWords(entitled)],
    ['quorum', quorumWords(quorum, needed)],
    ['carries with', carriesWords(carriedBy, kind)],
  ];
}

/** What a quorum asks for. */
export function quorumWords({ kind, amount }: Ballot['quorum'], needed: number | null): string {
  if (amount === 0) return 'none';
  if (kind === 'number') return handsWords(amount);
  return `${amount} % of those entitled${needed === null ? '' : `: ${handsWords(needed)}`}`;
}

/** What carries a question. */
export function carriesWords(by: Ballot['carriedBy'], kind: Ballot['kind']): string {
  if (by === 'two-thirds') return 'two thirds of the hands that do not abstain';
  return kind === 'motion' ? 'more hands for than against' : 'more hands than any other choice';
}
