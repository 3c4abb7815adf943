import { beforeAll, describe, expect, it } from 'vitest';
import { answerTo } from './answers';
import { rows } from './matrix/rows';
import { idsNamed } from './row';
import { fillSociety, type FilledSociety } from './society';

// Whoever may: to everybody whom a row names, it answers. What changes something gets a society of its own each time.
const named = rows.map((row) => [row.operation.name, row] as const);

describe('questions', () => {
  let society: FilledSociety;
  beforeAll(async () => {
    society = await fillSociety();
  });

  describe.each(named.filter(([, { operation }]) => operation.kind === 'query'))('%s', (_, row) => {
    it.each(row.allow)('answers the %s', async (who) => {
      expect((await answerTo(row.operation, society.callers[who], row.input(society.ids))).is).toBe('done');
    });
  });
});

describe('changes', () => {
  describe.each(named.filter(([, { operation }]) => operation.kind === 'mutation'))('%s', (_, row) => {
    it.each(row.allow)('is done for the %s', async (who) => {
      const society = await fillSociety(idsNamed(row.input));
      const answer = await answerTo(row.operation, society.callers[who], row.input(society.ids));
      expect(answer).toMatchObject({ is: 'done', text: expect.anything() });
    });
  });
});
