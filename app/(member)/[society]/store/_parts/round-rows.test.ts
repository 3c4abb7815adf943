import { describe, expect, it } from 'vitest';
import { type Round, rowInHand } from './round-rows';

const row = (id: string, round: { isDue: boolean } | null) => ({ id, round });
const places = [
  { rows: [row('done', { isDue: false }), row('first', { isDue: true })] },
  { rows: [row('second', { isDue: true }), row('used up', null)] },
] as unknown as Round['places'];

describe('the lot in hand', () => {
  it.each([
    [undefined, 'first'],
    ['second', 'second'],
    ['done', 'done'],
    ['used up', 'first'],
    ['of somebody else', 'first'],
  ])('asked for %s is %s', (asked, found) => expect(rowInHand(places, asked)?.id).toBe(found));

  it('is none where nothing is due', () => expect(rowInHand([], undefined)).toBeUndefined());
});
