import 'server-only';
import { z } from 'zod';
import { boardRulesOf, setBoardRules } from '@/lib/data/board-rules';
import { canKeepBoard } from '@/lib/domain/policy/board';
import { canEnter } from '@/lib/domain/policy/standing';
import { boardRulesInput } from '@/lib/schemas/board/board';
import { mutation, query } from '../operation';

/** The rules of the board in the society’s own words, or null where it set none. */
export const readBoardRules = query({
  name: 'read-board-rules',
  allow: canEnter,
  input: z.object({}),
  read: async ({ db, scope }) => {
    const { timeZone } = scope;
    return { rules: await boardRulesOf(db, scope), keeps: canKeepBoard(scope), timeZone };
  },
});

/** Set the rules of the board; those before stay on record. */
export const changeBoardRules = mutation({
  name: 'change-board-rules',
  allow: canKeepBoard,
  input: boardRulesInput,
  write: async ({ tx, scope, now, note }, { body }) => {
    await setBoardRules(tx, scope, body, now);
    note({ verb: 'set', thing: 'board rules', thingId: null, after: { letters: body.length } });
    return {};
  },
});
