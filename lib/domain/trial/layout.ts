import { ranksOf, seedOf } from '../sharing/lot';

/** A plot that takes part, with the ids of its two pieces of ground in the order in which its grower named them. */
export type Joined = { readonly id: string; readonly first: string; readonly second: string };

/** Where the lot puts what: a block with its number in the trial, and the ground of each treatment. */
export type LaidOut = {
  readonly id: string;
  readonly number: number;
  /** SHA-256 of `seed:id`. */
  readonly rank: string;
  readonly a: string;
  readonly b: string;
};

/**
 * What was joined as one text, always the same for the same blocks.
 *
 * Method: the trial's id on the first line; then one line `id:first:second` for each block, lines sorted by id in order of code units; every
 * line ended by a line feed; UTF-8.
 *
 * @throws RangeError on an id with a colon or a line feed in it, or one that stands twice
 * @example 't1\na:a1:a2\nb:b1:b2\n'
 */
export function canonicalBlocks(trialId: string, blocks: readonly Joined[]): string {
  const ids = [trialId, ...blocks.flatMap(({ id, first, second }) => [id, first, second])];
  for (const id of ids)
    if (id === '' || /[:\n]/.test(id)) throw new RangeError(`no id for a lot: ${JSON.stringify(id)}`);
  if (new Set(ids).size < ids.length) throw new RangeError('an id stands twice');
  const lines = [...blocks]
    .sort((one, other) => (one.id < other.id ? -1 : 1))
    .map(({ id, first, second }) => `${id}:${first}:${second}\n`);
  return `${trialId}\n${lines.join('')}`;
}

/**
 * The seed of a trial's lot: SHA-256 of the secret bytes followed by the canonical text of what was joined.
 *
 * @returns 64 lower-case hexadecimal digits
 * @throws RangeError when bytesHex is not 32 bytes, or as `canonicalBlocks`
 */
export function trialSeed(given: {
  readonly bytesHex: string;
  readonly trialId: string;
  readonly blocks: readonly Joined[];
}): string {
  return seedOf(given.bytesHex, canonicalBlocks(given.trialId, given.blocks));
}

/**
 * The layout of a trial: in each block a coin of its own says which piece of ground gets which treatment.
 *
 * Method: a block's rank is SHA-256 of the text `seed:id`. Where its last hexadecimal digit is even, A goes on the first piece and B on the
 * second; where it is odd, the other way round. So each of the 2ⁿ layouts is as likely as any, whatever the grower called first. Blocks are
 * numbered by their ranks, smallest first, so that a number tells nothing of who joined when.
 *
 * @param seedHex  as `trialSeed`
 * @param blocks   unique ids
 * @returns        one for each block, by number; each of its two pieces once; the order of the blocks given changes nothing
 * @throws RangeError on an id that stands twice
 * @source         R. A. Fisher, The Design of Experiments, 1935, chapter III: pairs whose order is drawn by a coin
 * @example        the rank of block a ends in 4: A on a1, B on a2
 */
export function layout(seedHex: string, blocks: readonly Joined[]): LaidOut[] {
  if (new Set(blocks.map(({ id }) => id)).size < blocks.length) throw new RangeError('an id stands twice');
  const rankOf = ranksOf(seedHex);
  return blocks
    .map(({ id, first, second }) => ({ id, first, second, rank: rankOf(id) }))
    .sort((one, other) => (one.rank < other.rank ? -1 : 1))
    .map(({ id, first, second, rank }, at) => {
      const [a, b] = isEven(rank) ? [first, second] : [second, first];
      return { id, number: at + 1, rank, a, b };
    });
}

function isEven(rank: string): boolean {
  return Number.parseInt(rank.slice(-1), 16) % 2 === 0;
}
