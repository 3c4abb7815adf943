import { handsNeeded, type Quorum } from './quorum';

/** What a hand can be raised for. Only a motion has a for and an against. */
export type Choice = { readonly id: string; readonly stands: 'for' | 'against' | 'choice' | 'abstain' };

/** A hand as it was raised: whose it is (a member's, or a holding's), and for what. */
export type RaisedHand = { readonly holder: string; readonly choiceId: string };

/** More for it than against (or than for any other choice), or at least two thirds of the hands that did not abstain. */
export type CarriedBy = 'more' | 'two-thirds';

export type Outcome = 'carried' | 'not-carried' | 'no-quorum';

export type Tally = {
  readonly counts: readonly { readonly choiceId: string; readonly hands: number }[];
  /** Hands that count, abstentions with them. */
  readonly hands: number;
  readonly needed: number;
  readonly outcome: Outcome;
  /** What carried: the motion’s “for”, or the choice; null where nothing did. */
  readonly carriedId: string | null;
};

/**
 * Count the hands that were raised for the choices of one question.
 *
 * Method: of each holder the last hand counts. Below the quorum nothing carries. Abstentions count towards the quorum and for nothing
 * else. A motion carries with more hands for than against; a choice with more than every other, so that two that stand equal at the head
 * carry nothing; by two thirds, with at least two thirds of the hands that did not abstain. Nothing carries without a hand for it.
 *
 * @param choices   2 or more, unique ids
 * @param hands     in the order in which they were raised, 0 or more
 * @param entitled  hands that could be raised; integer ≥ the number of holders that raised one
 * @returns         one count for each choice, in their order, summing to the hands that count, which are at most `entitled`
 * @throws RangeError on fewer than two choices, a repeated or unknown choice, or more hands than are entitled
 * @source          common practice of societies' rules: a simple majority, or two thirds of those voting; abstentions are no votes
 * @example         7 for, 5 against, 2 abstain of 20, quorum 10 → carried; by two thirds → not carried
 */
export function tally(
  choices: readonly Choice[],
  hands: readonly RaisedHand[],
  rule: { readonly entitled: number; readonly quorum: Quorum; readonly carriedBy: CarriedBy },
): Tally {
  const ids = new Set(choices.map(({ id }) => id));
  if (choices.length < 2 || ids.size < choices.length) throw new RangeError('choices are two or more, each once');
  if (hands.some(({ choiceId }) => !ids.has(choiceId))) throw new RangeError('a hand is raised for one of the choices');
  const last = [...new Map(hands.map(({ holder, choiceId }) => [holder, choiceId])).values()];
  if (last.length > rule.entitled) throw new RangeError('no more hands than are entitled');
  const counts = choices.map(({ id }) => ({ choiceId: id, hands: last.filter((choiceId) => choiceId === id).length }));
  const needed = handsNeeded(rule.quorum, rule.entitled);
  const carriedId = last.length < needed ? null : carried(choices, counts, rule.carriedBy);
  const outcome = last.length < needed ? 'no-quorum' : carriedId === null ? 'not-carried' : 'carried';
  return { counts, hands: last.length, needed, outcome, carriedId };
}

function carried(choices: readonly Choice[], counts: Tally['counts'], by: CarriedBy): string | null {
  const standing = choices
    .map(({ id, stands }, at) => ({ id, stands, hands: counts[at]?.hands ?? 0 }))
    .filter(({ stands }) => stands !== 'abstain');
  const cast = standing.reduce((sum, { hands }) => sum + hands, 0);
  const isEnough = (one: (typeof standing)[number]) =>
    one.stands !== 'against' &&
    one.hands > 0 &&
    (by === 'two-thirds'
      ? 3 * one.hands >= 2 * cast
      : standing.every((other) => other.id === one.id || other.hands < one.hands));
  return standing.find(isEnough)?.id ?? null;
}
