import 'server-only';

const held = new Map<string, Promise<unknown>>();

/**
 * The first answer to a question, again and again: for measuring what a page costs without the database, and for
 * nothing else. A process holds answers only when it was started for that (`BARROWMOOT_BENCH` beside `BARROWMOOT_TEST`).
 */
export function heldAnswer<Answer>(key: string, work: () => Promise<Answer>): Promise<Answer> {
  const first = (held.get(key) as Promise<Answer> | undefined) ?? work();
  held.set(key, first);
  return first;
}
