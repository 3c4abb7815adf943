import 'server-only';
import { z } from 'zod';
import { noticesStanding, searchPosts, threadsLately } from '@/lib/data/board';
import { openReports } from '@/lib/data/post-report';
import { topicTyped, typedTopic } from '@/lib/domain/board/topic';
import { canKeepBoard } from '@/lib/domain/policy/board';
import { canEnter } from '@/lib/domain/policy/standing';
import { query } from '../operation';
import { topicsFor } from './choose-topic';
import { topicState, topicStates } from './topic-state';

const threadsShown = 30;
const foundShown = 40;

const pageNumber = z.coerce.number().int().min(1).max(10_000).catch(1);

/** The board: notices that stand, and threads by when they were last written in; of one topic where it is asked for. */
export const readBoard = query({
  name: 'read-board',
  allow: canEnter,
  input: z.object({ page: pageNumber.optional(), topic: z.string().max(100).optional() }),
  read: async (context, { page = 1, topic: typed }) => {
    const { db, scope, today } = context;
    const topic = typed ? topicTyped(typed) : null;
    const asked = { skip: (page - 1) * threadsShown, take: threadsShown + 1, today };
    const [notices, threads] = await Promise.all([
      page === 1 && !topic ? noticesStanding(db, scope, today) : [],
      threadsLately(db, scope, asked, topic),
    ]);
    const keeps = canKeepBoard(scope);
    const states = await topicStates(
      context,
      threads.flatMap((thread) => thread.topic ?? []),
    );
    return {
      notices,
      threads: threads.slice(0, threadsShown),
      states: Object.fromEntries(states.map((state) => [typedTopic(state), state])),
      topic: topic && (await topicState(context, topic)),
      page,
      isMore: threads.length > threadsShown,
      keeps,
      reports: keeps ? (await openReports(db, scope)).length : 0,
      timeZone: scope.timeZone,
      today,
    };
  },
});

/** What a thread may be about, for the form that begins one. */
export const readTopics = query({
  name: 'read-topics',
  allow: canEnter,
  input: z.object({}),
  read: async (context) => ({ topics: await topicsFor(context), keeps: canKeepBoard(context.scope) }),
});

/** Posts that hold words; only what everybody may read is searched. */
export const searchBoard = query({
  name: 'search-board',
  allow: canEnter,
  input: z.object({ words: z.string().trim().max(200).catch('') }),
  read: async ({ db, scope, today }, { words }) => {
    const plain = words.replaceAll(/[\p{C}]/gu, ' ').trim();
    const found = plain ? await searchPosts(db, scope, plain, { today, take: foundShown }) : [];
    return { words: plain, found, isFull: found.length === foundShown, timeZone: scope.timeZone };
  },
});
